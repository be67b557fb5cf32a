package org.bellowscribe.cli;

import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.marking.Steering;

/** Reads which note to explain: {@code 12}, {@code 12:3} or, for a rest, {@code 12:r1}. */
record QuestionReader() implements ValueReader<Steering.Question> {

    private static final String REST = "r";
    private static final WholeNumber NOTE = new WholeNumber(1, 999);

    @Override
    public String takes() {
        return "a measure, or a measure and a note such as 12:3 or a rest such as 12:r1";
    }

    @Override
    public Steering.Question read(String option, String text) throws UsageException {
        int colon = text.indexOf(':');
        if (colon < 0) {
            return new Steering.Question(text, 0, false);
        }
        if (colon == 0) {
            throw UsageException.notTaken(option, takes(), text);
        }
        try {
            String place = text.substring(colon + 1);
            boolean rest = place.startsWith(REST);
            int number = NOTE.read(option, rest ? place.substring(REST.length()) : place);
            return new Steering.Question(text.substring(0, colon), number, rest);
        } catch (UsageException e) {
            throw UsageException.notTaken(option, takes(), text);
        }
    }
}
