package org.bellowscribe.edition;

import java.util.stream.Collectors;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.NoteName;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.Spelling;

/** Names the first notes of a tune, by which a player knows it. */
final class FirstNotes {

    private static final int COUNT = 7;

    private FirstNotes() {}

    /** Returns the names, such as {@code G4 B4 D5}; of notes struck together the highest. */
    static String of(Tune tune) {
        return tune.events().stream()
                .filter(event -> !event.isRest() && !event.heldOver())
                .limit(COUNT)
                .map(event -> name(tune, event))
                .collect(Collectors.joining(" "));
    }

    private static String name(Tune tune, Event event) {
        Pitch top = event.pitches().get(event.pitches().size() - 1);
        NoteName name = Spelling.of(
                        top.pitchClass(), tune.measureOf(event).key().fifths())
                .from(top.midiNumber());
        return name.toString();
    }
}
