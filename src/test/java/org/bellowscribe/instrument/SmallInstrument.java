package org.bellowscribe.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Makes small instruments out of short words. */
final class SmallInstrument {

    private static final Bellows BELLOWS = new Bellows(40, 0.08, 7, 20);
    private static final AirModel AIR = new AirModel(440, 1, 0.25, 4, List.of(0, 0), 6, 4, 2.7, 0.05);

    private SmallInstrument() {}

    /** Returns an instrument without bass side; each row has {@code push/pull} words, {@code -} for silence. */
    static Instrument of(String... rows) {
        List<Button> buttons = new ArrayList<>();
        for (int row = 1; row <= rows.length; row++) {
            String[] words = rows[row - 1].split(" ", -1);
            for (int number = 1; number <= words.length; number++) {
                String[] notes = words[number - 1].split("/", -1);
                buttons.add(new Button(row, number, pitch(notes[0]), pitch(notes[1])));
            }
        }
        return with(buttons, List.of());
    }

    /** Returns the instrument with one column of left-hand buttons, {@code push/pull} each in the trade's letters. */
    static Instrument withBasses(Instrument instrument, String words) {
        List<LeftHandButton> leftHand = new ArrayList<>();
        for (String word : words.split(" ", -1)) {
            String[] sounds = word.split("/", -1);
            leftHand.add(new LeftHandButton(1, leftHand.size() + 1, sound(sounds[0]), sound(sounds[1])));
        }
        return with(instrument.buttons(), leftHand);
    }

    /** Returns an instrument of these buttons. */
    static Instrument with(List<Button> buttons, List<LeftHandButton> leftHand) {
        return new Instrument("small", "Small <box>", buttons, leftHand, BELLOWS, AIR);
    }

    private static @Nullable Pitch pitch(String name) {
        return name.equals("-") ? null : Pitch.parse(name);
    }

    private static @Nullable LeftHandSound sound(String letters) {
        if (letters.equals("-")) {
            return null;
        }
        boolean minor = letters.endsWith("m");
        String root = letters.substring(0, 1).toUpperCase(Locale.ROOT)
                + letters.substring(1, letters.length() - (minor ? 1 : 0));
        return letters.startsWith(root)
                ? LeftHandSound.bass(PitchClass.parse(root))
                : LeftHandSound.chord(PitchClass.parse(root), minor ? Third.MINOR : Third.MAJOR);
    }
}
