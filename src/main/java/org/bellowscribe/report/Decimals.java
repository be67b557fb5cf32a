package org.bellowscribe.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How numbers that are not whole are written into a record. */
final class Decimals {

    private static final int PLACES = 9;

    private Decimals() {}

    /** Returns a quantity, always with a decimal point, so that it is seen to be one. */
    static BigDecimal real(double value) {
        BigDecimal plain = plain(value);
        return plain.scale() < 1 ? plain.setScale(1) : plain;
    }

    /** Returns a number without zeros at its end. */
    static BigDecimal plain(double value) {
        return new BigDecimal(value).setScale(PLACES, RoundingMode.HALF_EVEN).stripTrailingZeros();
    }
}
