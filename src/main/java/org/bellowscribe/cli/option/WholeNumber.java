package org.bellowscribe.cli.option;

/**
 * Reads a whole number.
 *
 * @param least the least that is taken
 * @param most the most
 * @param unit what it counts, such as {@code percent}; empty if the option's name says it
 * @param where words behind the limits, such as {@code on these bellows}; mostly empty
 */
public record WholeNumber(int least, int most, String unit, String where) implements ValueReader<Integer> {

    /** Reads a number without a unit. */
    public WholeNumber(int least, int most) {
        this(least, most, "", "");
    }

    /** Reads a number of something. */
    public WholeNumber(int least, int most, String unit) {
        this(least, most, unit, "");
    }

    @Override
    public String takes() {
        return "a whole number%s from %d to %d%s"
                .formatted(unit.isEmpty() ? "" : " of " + unit, least, most, where.isEmpty() ? "" : " " + where);
    }

    @Override
    public Integer read(String option, String text) throws UsageException {
        try {
            int number = Integer.parseInt(text.strip());
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException e) {
            // Said below, like a number out of range.
        }
        throw UsageException.notTaken(option, takes(), text);
    }
}
