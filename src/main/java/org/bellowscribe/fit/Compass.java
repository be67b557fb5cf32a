package org.bellowscribe.fit;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.ChordSymbol;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/** What an instrument gives, laid out to look up quickly. */
final class Compass {

    private static final int PITCHES = 128;
    private static final int MISSING_HARMONY = 10;

    private final List<List<Place>> places = new ArrayList<>();
    private final boolean[] basses = new boolean[12];
    private final boolean hasLeftHand;

    /** Where a pitch lies. */
    record Place(BellowsDirection direction, int row, int number) {}

    Compass(Instrument instrument) {
        for (int i = 0; i < PITCHES; i++) {
            places.add(new ArrayList<>());
        }
        for (Button button : instrument.buttons()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                Pitch pitch = button.pitch(direction);
                if (pitch != null) {
                    places.get(pitch.midiNumber()).add(new Place(direction, button.row(), button.number()));
                }
            }
        }
        hasLeftHand = !instrument.leftHand().isEmpty();
        for (LeftHandButton button : instrument.leftHand()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                LeftHandSound sound = button.sound(direction);
                if (sound != null) {
                    basses[sound.root().semitone()] = true;
                }
            }
        }
    }

    /** Returns where a pitch lies; empty if nowhere, also for numbers that are no pitch. */
    List<Place> places(int midiNumber) {
        return midiNumber < 0 || midiNumber >= PITCHES ? List.of() : places.get(midiNumber);
    }

    /** Returns points for the chord symbols of a tune whose root the left hand has not at all. */
    int missingHarmony(Tune tune, int semitones) {
        if (!hasLeftHand) {
            return 0;
        }
        int points = 0;
        for (Harmony harmony : tune.harmonies()) {
            ChordSymbol chord = harmony.chord();
            PitchClass root = chord == null ? null : chord.root().plus(semitones);
            points += root == null || basses[root.semitone()] ? 0 : MISSING_HARMONY;
        }
        return points;
    }
}
