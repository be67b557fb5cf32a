package org.bellowscribe.annotation;

import org.bellowscribe.instrument.Bellows;

/** How far the bellows are open, as the nearest fraction that a player can judge by eye. */
public enum OpeningPart {
    /** Closed. */
    CLOSED(0),
    /** A quarter open. */
    QUARTER(3),
    /** A third open. */
    THIRD(4),
    /** Half open. */
    HALF(6),
    /** Two thirds open. */
    TWO_THIRDS(8),
    /** Three quarters open. */
    THREE_QUARTERS(9),
    /** Open all the way. */
    WIDE(12);

    private static final int WHOLE = 12;

    private final int twelfths;

    OpeningPart(int twelfths) {
        this.twelfths = twelfths;
    }

    /**
     * Returns the nearest part; of two equally near the smaller.
     *
     * @param opening in thousandths of a RU.s
     */
    public static OpeningPart nearest(int opening, Bellows bellows) {
        double exact = WHOLE * opening / (1000 * bellows.capacity());
        OpeningPart nearest = CLOSED;
        for (OpeningPart part : values()) {
            if (Math.abs(part.twelfths - exact) < Math.abs(nearest.twelfths - exact)) {
                nearest = part;
            }
        }
        return nearest;
    }

    /** Returns the fraction in lowest terms, such as {@code 2/3}; {@code 0} or {@code 1} at the ends. */
    public String fraction() {
        return switch (this) {
            case CLOSED -> "0";
            case QUARTER -> "1/4";
            case THIRD -> "1/3";
            case HALF -> "1/2";
            case TWO_THIRDS -> "2/3";
            case THREE_QUARTERS -> "3/4";
            case WIDE -> "1";
        };
    }
}
