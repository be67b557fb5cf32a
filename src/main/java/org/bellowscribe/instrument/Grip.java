package org.bellowscribe.instrument;

import java.util.List;

/**
 * How fingers lie on the buttons. The hand of a melodeon moves along the rows; on a concertina each hand is strapped in
 * one place, the two index fingers innermost.
 *
 * <p>Home of a strapped hand, published for the Anglo concertina: on the left the little finger on button 1, ring 3,
 * middle 4, index 5; on the right index 6 to little finger 9 (first source of anglo-cg-20). So the fifth column, button 2 on the left and button 10 on the right, is reached by a
 * stretch: of the little finger. The ring finger
 * gives way to it where both outermost buttons sound.
 *
 * @param strapped true if there is a hand on either end, each strapped in one place
 * @param leftIndex number of the buttons under the left index finger; 0 unless strapped
 * @param rightIndex number of the buttons under the right index finger; 0 unless strapped
 */
public record Grip(boolean strapped, int leftIndex, int rightIndex) {

    /** One hand that moves along the rows. */
    public static final Grip MOVING = new Grip(false, 0, 0);

    private static final int FINGERS = 4;
    private static final int RING = 3;

    /** Returns how an instrument with these buttons is held: strapped if both hands have buttons. */
    static Grip of(List<Button> buttons) {
        int left = 0;
        int right = Integer.MAX_VALUE;
        for (Button button : buttons) {
            if (button.hand() == Hand.LEFT) {
                left = Math.max(left, button.number());
            } else {
                right = Math.min(right, button.number());
            }
        }
        return left == 0 || right == Integer.MAX_VALUE ? MOVING : new Grip(true, left, right);
    }

    /**
     * Returns the fingers, 1 (index) to 4 (little), that can reach a button, the nearest first; empty if none can.
     *
     * @param handOn number of the button under the index finger of a hand that moves; of no meaning if strapped
     */
    public List<Integer> fingers(Button button, int handOn) {
        int column = column(button, handOn);
        if (!strapped) {
            return column < 0 || column > FINGERS + 1 ? List.of() : List.of(Math.max(1, Math.min(FINGERS, column)));
        }
        if (column < 1 || column > FINGERS + 1) {
            return List.of();
        }
        if (column <= RING) {
            return List.of(column);
        }
        return column == FINGERS ? List.of(FINGERS, RING) : List.of(FINGERS);
    }

    /** Returns true if a button is the finger's own: where it lies without stretching. */
    public boolean isHome(Button button, int handOn, int finger) {
        int column = column(button, handOn);
        boolean littleFingerFar = strapped && button.hand() == Hand.LEFT && finger == FINGERS;
        return column == (littleFingerFar ? FINGERS + 1 : finger);
    }

    /** Returns the place of a button counted from the index finger outwards: 1 is under it. */
    private int column(Button button, int handOn) {
        if (!strapped) {
            return button.number() - handOn + 1;
        }
        return button.hand() == Hand.LEFT ? leftIndex - button.number() + 1 : button.number() - rightIndex + 1;
    }
}
