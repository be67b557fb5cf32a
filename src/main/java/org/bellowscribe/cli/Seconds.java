package org.bellowscribe.cli;

import java.math.BigDecimal;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;

/** Reads a time of the stop-watch in seconds, with a point or a comma. */
record Seconds() implements ValueReader<Double> {

    private static final BigDecimal LEAST = BigDecimal.ONE;
    private static final BigDecimal MOST = BigDecimal.valueOf(600);

    @Override
    public String takes() {
        return "seconds from %s to %s, such as 17 or 17.5".formatted(LEAST, MOST);
    }

    @Override
    public Double read(String option, String text) throws UsageException {
        try {
            BigDecimal seconds = new BigDecimal(text.strip().replace(',', '.'));
            if (seconds.compareTo(LEAST) >= 0 && seconds.compareTo(MOST) <= 0) {
                return seconds.doubleValue();
            }
        } catch (NumberFormatException e) {
            // Said below, like a time out of range.
        }
        throw UsageException.notTaken(option, takes(), text);
    }
}
