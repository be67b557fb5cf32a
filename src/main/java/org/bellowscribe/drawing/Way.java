package org.bellowscribe.drawing;

/** A broken line as the attribute {@code d} of a path, short: tenths of a unit, each point seen from the one before. */
final class Way {

    private static final double TENTHS = 10;

    private final StringBuilder text = new StringBuilder();
    private long lastX;
    private long lastY;

    /** Begins at a point. */
    Way(double x, double y) {
        lastX = Math.round(x * TENTHS);
        lastY = Math.round(y * TENTHS);
        text.append('M').append(number(lastX)).append(gap(lastY)).append('l');
    }

    /** Goes on to a point; nowhere if it is the same to a tenth. */
    void to(double x, double y) {
        long nextX = Math.round(x * TENTHS);
        long nextY = Math.round(y * TENTHS);
        if (nextX != lastX || nextY != lastY) {
            char before = text.charAt(text.length() - 1);
            text.append(before == 'l' ? number(nextX - lastX) : gap(nextX - lastX));
            text.append(gap(nextY - lastY));
            lastX = nextX;
            lastY = nextY;
        }
    }

    private static String gap(long tenths) {
        return tenths < 0 ? number(tenths) : " " + number(tenths);
    }

    private static String number(long tenths) {
        return Svg.number(tenths / TENTHS);
    }

    @Override
    public String toString() {
        return text.charAt(text.length() - 1) == 'l' ? text + "0 0" : text.toString();
    }
}
