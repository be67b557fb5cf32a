package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;

/**
 * The order in which the written measures sound in one playing of the tune.
 *
 * @param measures 0-based indices of measures, one for each time a measure is played
 */
public record PlayOrder(List<Integer> measures) {

    /** Copies the list. */
    public PlayOrder {
        measures = List.copyOf(measures);
    }

    /** Returns true if a measure is played at least once. */
    public boolean plays(int measure) {
        return measures.contains(measure);
    }

    /**
     * Returns true if a measure is always played directly after the one written before it, and nothing else ever follows
     * that one.
     */
    public boolean isStraight(int measure) {
        if (!measures.isEmpty() && (measures.get(0) == measure || measures.get(measures.size() - 1) == measure - 1)) {
            return false;
        }
        for (int i = 1; i < measures.size(); i++) {
            if ((measures.get(i) == measure) != (measures.get(i - 1) == measure - 1)) {
                return false;
            }
        }
        return true;
    }

    /** Returns the order in short form with 1-based indices, such as {@code 1-8, 1-7, 9}. */
    public String shortForm() {
        return shortForm(measure -> String.valueOf(measure + 1), Set.of());
    }

    /**
     * Returns the order section by section, such as {@code 1-8, 1-8, 9-16}: a run ends also where the player ever goes
     * back, and one begins where the player ever goes back to.
     *
     * @param numbers for each measure its printed number
     */
    public String sections(List<String> numbers) {
        return shortForm(numbers::get, cuts());
    }

    /** Returns the sections as they are played, one after the other: measures that follow each other in the score. */
    public List<List<Integer>> runs() {
        return runs(cuts());
    }

    private String shortForm(IntFunction<String> number, Set<Integer> cuts) {
        List<String> words = new ArrayList<>();
        for (List<Integer> run : runs(cuts)) {
            String first = number.apply(run.get(0));
            String last = number.apply(run.get(run.size() - 1));
            words.add(first.equals(last) ? first : first + "-" + last);
        }
        return String.join(", ", words);
    }

    private List<List<Integer>> runs(Set<Integer> cuts) {
        List<List<Integer>> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= measures.size(); i++) {
            if (i == measures.size() || measures.get(i) != measures.get(i - 1) + 1 || cuts.contains(measures.get(i))) {
                runs.add(measures.subList(start, i));
                start = i;
            }
        }
        return runs;
    }

    /** Returns the measures at whose start a run ends. */
    private Set<Integer> cuts() {
        Set<Integer> cuts = new HashSet<>();
        for (int i = 1; i < measures.size(); i++) {
            if (measures.get(i) <= measures.get(i - 1)) {
                cuts.add(measures.get(i));
                cuts.add(measures.get(i - 1) + 1);
            }
        }
        return cuts;
    }
}
