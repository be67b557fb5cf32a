package org.bellowscribe.cli;

import org.bellowscribe.batch.Selection;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;

/** Reads one of several shares, such as {@code 3/20}. */
record ShareReader() implements ValueReader<Selection.Share> {

    private static final int MOST = 100_000;

    @Override
    public String takes() {
        return "a share and how many there are, such as 1/4 to 4/4 (at most %d)".formatted(MOST);
    }

    @Override
    public Selection.Share read(String option, String text) throws UsageException {
        String[] numbers = text.split("/", -1);
        try {
            int number = Integer.parseInt(numbers[0].strip());
            int of = Integer.parseInt(numbers.length == 2 ? numbers[1].strip() : "");
            if (number >= 1 && number <= of && of <= MOST) {
                return new Selection.Share(number, of);
            }
        } catch (NumberFormatException e) {
            // Said below, like a share out of range.
        }
        throw UsageException.notTaken(option, takes(), text);
    }
}
