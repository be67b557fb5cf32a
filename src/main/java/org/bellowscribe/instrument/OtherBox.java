package org.bellowscribe.instrument;

import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/**
 * Another box on which a tune is played with the same hands: the same notes in the same directions on the same rows with the
 * same fingers, every number shifted alike.
 *
 * @param own the box for which the tune is decided, with all its buttons
 * @param other the other box
 * @param shift what is added to the number of a button of the own box
 */
public record OtherBox(Instrument own, Instrument other, int shift) {

    private static final int FARTHEST = 3;

    /**
     * Compares two boxes, each of which one hand plays.
     *
     * @return the shift under which they have most notes in common, of several the nearest; null if they have none in
     *     common, or their bellows differ, so that they want other air marks
     */
    public static @Nullable OtherBox of(Instrument own, Instrument other) {
        boolean alike = own.bellows().equals(other.bellows())
                && own.air().equals(other.air())
                && !own.grip().strapped()
                && !other.grip().strapped();
        OtherBox best = null;
        for (int distance = 0; alike && distance <= FARTHEST; distance++) {
            for (int shift : distance == 0 ? new int[] {0} : new int[] {distance, -distance}) {
                OtherBox box = new OtherBox(own, other, shift);
                int most = best == null ? 0 : best.notesInCommon();
                best = box.notesInCommon() > most ? box : best;
            }
        }
        return best;
    }

    private int notesInCommon() {
        int count = 0;
        for (Button button : own.buttons()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                count += has(button, direction) ? 1 : 0;
            }
        }
        return count;
    }

    /** Returns true if a note of a button of the own box is where the hand looks for it on the other. */
    public boolean has(Button button, BellowsDirection direction) {
        Pitch pitch = button.pitch(direction);
        return pitch != null
                && other.buttons().stream()
                        .anyMatch(each -> each.row() == button.row()
                                && each.number() == button.number() + shift
                                && pitch.equals(each.pitch(direction)));
    }

    /** Returns true if some button of the left hand of the other box has a sound in a direction. */
    public boolean has(LeftHandSound sound, BellowsDirection direction) {
        return other.leftHand().stream().anyMatch(each -> sound.equals(each.sound(direction)));
    }

    /** Returns a button of the own box under the number that it has on the other. */
    public Button numbered(Button button) {
        return new Button(button.row(), button.number() + shift, button.push(), button.pull(), button.hand());
    }
}
