package org.bellowscribe.instrument;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The words of a drawing of an instrument. Places stand in braces.
 *
 * @param title title of a page; place {@code {name}}
 * @param push pushed
 * @param pull pulled
 * @param row a row; place {@code {row}}
 * @param column a column of basses; place {@code {column}}
 * @param melody which hand plays the melody buttons and how they are numbered; place {@code {hand}}
 * @param bothHands the same where both hands do
 * @param basses which hand plays the basses and how they are written; place {@code {hand}}
 * @param openBasses the same where chords have no third
 * @param noBasses that there are none
 * @param leftHand the left hand
 * @param rightHand the right hand
 */
public record KeyboardWords(
        String title,
        String push,
        String pull,
        String row,
        String column,
        String melody,
        String bothHands,
        String basses,
        String openBasses,
        String noBasses,
        String leftHand,
        String rightHand) {

    /** The words in English. */
    public static final KeyboardWords ENGLISH = new KeyboardWords(
            "Buttons of {name}",
            "push",
            "pull",
            "row {row}",
            "column {column}",
            "Melody, {hand}: row 1 is away from the bellows, button 1 nearest the chin. C4 is middle C.",
            "Melody, both hands: button 1 lies under the little finger of the left hand, buttons 6, 16 and 26 under the right"
                    + " index finger.",
            "Basses, {hand}: capital letter bass, small letter chord (m for minor); button 1 nearest the chin.",
            "Basses, {hand}: capital letter bass, small letter chord (without third); button 1 nearest the chin.",
            "No bass side.",
            "left hand",
            "right hand");

    /** Returns the title of a page. */
    String titleOf(Instrument instrument) {
        return title.replace("{name}", instrument.name());
    }

    /** Returns the name of a row. */
    String row(int number) {
        return row.replace("{row}", String.valueOf(number));
    }

    /** Returns the name of a column. */
    String column(int number) {
        return column.replace("{column}", String.valueOf(number));
    }

    /** Returns which hand plays the melody buttons and how they are numbered. */
    String melody(Instrument instrument) {
        List<Hand> hands =
                instrument.buttons().stream().map(Button::hand).distinct().toList();
        return hands.size() > 1
                ? bothHands
                : melody.replace("{hand}", hand(hands.isEmpty() ? Hand.RIGHT : hands.get(0)));
    }

    /** Returns which hand plays the basses and how they are written. */
    String basses(Instrument instrument) {
        if (instrument.leftHand().isEmpty()) {
            return noBasses;
        }
        boolean leftHanded = instrument.buttons().stream().allMatch(button -> button.hand() == Hand.LEFT);
        String text = withoutThirds(instrument) ? openBasses : basses;
        return text.replace("{hand}", hand(leftHanded ? Hand.RIGHT : Hand.LEFT));
    }

    /** Returns the name of a hand. */
    private String hand(Hand hand) {
        return hand == Hand.LEFT ? leftHand : rightHand;
    }

    /** Returns a hand with a capital letter, such as {@code Left hand}. */
    String title(Hand hand) {
        String label = hand(hand);
        return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
    }

    private static boolean withoutThirds(Instrument instrument) {
        return instrument.leftHand().stream()
                .flatMap(button -> Stream.of(button.push(), button.pull()))
                .noneMatch(sound -> sound != null && sound.kind() == LeftHandKind.CHORD && sound.third() != Third.NONE);
    }
}
