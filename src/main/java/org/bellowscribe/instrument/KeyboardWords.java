package org.bellowscribe.instrument;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The words that every drawing of an instrument has. */
final class KeyboardWords {

    private KeyboardWords() {}

    /** Returns which hand plays the melody buttons and how they are numbered. */
    static String melody(Instrument instrument) {
        List<Hand> hands =
                instrument.buttons().stream().map(Button::hand).distinct().toList();
        if (hands.size() > 1) {
            return "Melody, both hands: button 1 lies under the little finger of the left hand, buttons 6, 16 and 26 under the"
                    + " right index finger.";
        }
        return "Melody, %s hand: row 1 is away from the bellows, button 1 nearest the chin. C4 is middle C."
                .formatted(hands.isEmpty() ? "right" : hands.get(0).label());
    }

    /** Returns which hand plays the basses and how they are written. */
    static String leftHand(Instrument instrument) {
        if (instrument.leftHand().isEmpty()) {
            return "No bass side.";
        }
        String hand = instrument.buttons().stream().allMatch(button -> button.hand() == Hand.LEFT) ? "right" : "left";
        String thirds = withoutThirds(instrument) ? "without third" : "m for minor";
        return "Basses, %s hand: capital letter bass, small letter chord (%s); button 1 nearest the chin."
                .formatted(hand, thirds);
    }

    /** Returns a hand with a capital letter, such as {@code Left hand}. */
    static String title(Hand hand) {
        String label = hand.label();
        return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1) + " hand";
    }

    private static boolean withoutThirds(Instrument instrument) {
        return instrument.leftHand().stream()
                .flatMap(button -> Stream.of(button.push(), button.pull()))
                .noneMatch(sound -> sound != null && sound.kind() == LeftHandKind.CHORD && sound.third() != Third.NONE);
    }
}
