package org.bellowscribe.cli;

import java.util.List;
import java.util.TreeSet;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.fit.FitOptions;

/** Reads transpositions such as {@code -5..7,12}: semitones, rising, each once. */
record SemitoneRanges() implements ValueReader<List<Integer>> {

    private static final WholeNumber SEMITONES = new WholeNumber(-FitOptions.MOST_SEMITONES, FitOptions.MOST_SEMITONES);
    private static final String TO = "..";

    @Override
    public String takes() {
        return "whole numbers and rising ranges from %d to %d with commas between, such as -5..7,12"
                .formatted(SEMITONES.least(), SEMITONES.most());
    }

    @Override
    public List<Integer> read(String option, String text) throws UsageException {
        try {
            TreeSet<Integer> semitones = new TreeSet<>();
            for (String range : WordList.split(text)) {
                int between = range.indexOf(TO);
                int from = SEMITONES.read(option, between < 0 ? range : range.substring(0, between));
                int to = between < 0 ? from : SEMITONES.read(option, range.substring(between + TO.length()));
                if (from > to) {
                    throw wrong(option, text);
                }
                for (int each = from; each <= to; each++) {
                    semitones.add(each);
                }
            }
            return List.copyOf(semitones);
        } catch (UsageException e) {
            throw wrong(option, text);
        }
    }

    private UsageException wrong(String option, String text) {
        return UsageException.notTaken(option, takes(), text);
    }
}
