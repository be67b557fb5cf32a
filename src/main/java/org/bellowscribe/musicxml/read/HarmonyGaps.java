package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Harmony;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.PlayOrder;
import org.jspecify.annotations.Nullable;

/**
 * Finds where a score with chord symbols says nothing about the harmony: well before the first symbol, in a section without
 * any, and where none has been written for so long that the last can hardly be meant. "No chord" is something said.
 */
final class HarmonyGaps {

    /** A symbol holds for so many measures, a phrase of most tunes; common practice, no source. */
    private static final int LONGEST = 8;
    /** Shorter sections, such as endings, go on with the harmony before them. */
    private static final int SHORTEST_SECTION = 4;

    private final List<Harmony> written;
    private final List<Measure> measures;
    private final List<Integer> sections;
    private final SortedSet<Integer> unwritten = new TreeSet<>();

    /**
     * Looks for gaps.
     *
     * @param written the chord symbols in score order
     * @param sections 0-based measures with which sections of the tune start, ascending
     */
    HarmonyGaps(List<Harmony> written, List<Measure> measures, List<Integer> sections) {
        this.written = written;
        this.measures = measures;
        this.sections = sections;
    }

    /** Returns the chord symbols, and before each gap a harmony that is not written. */
    List<Harmony> marked(List<Diagnostic> remarks) {
        if (written.isEmpty()) {
            return written;
        }
        List<Harmony> all = new ArrayList<>();
        int first = written.get(0).measure();
        if (isLead(first)) {
            all.add(gap(0, first));
        }
        for (int i = 0; i < written.size(); i++) {
            Harmony harmony = written.get(i);
            all.add(harmony);
            int end = i + 1 < written.size() ? written.get(i + 1).measure() : measures.size();
            int from = from(harmony, end);
            if (harmony.chord() != null && from < end) {
                all.add(gap(from, end));
            }
        }
        remark(remarks);
        return all;
    }

    // A pick-up may be written as a whole measure.
    private boolean isLead(int first) {
        return measures.subList(0, first).stream()
                        .filter(measure -> measure.length().isPositive()
                                && !measure.beatOffset().isPositive())
                        .count()
                > 1;
    }

    private int from(Harmony harmony, int end) {
        int from = harmony.measure() + LONGEST;
        for (int i = sections.size() - 1; i >= 0; i--) {
            int start = sections.get(i);
            int next = i + 1 < sections.size() ? sections.get(i + 1) : measures.size();
            if (start > harmony.measure() && next <= end && next - start >= SHORTEST_SECTION) {
                from = Math.min(from, start);
            }
        }
        return from;
    }

    private Harmony gap(int from, int end) {
        for (int i = from; i < end; i++) {
            unwritten.add(i);
        }
        return Harmony.unwrittenFrom(from);
    }

    private void remark(List<Diagnostic> remarks) {
        String where = where();
        if (where != null) {
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "The score has no chord symbols in measures %s; a harmony is found there.".formatted(where)));
        }
    }

    private @Nullable String where() {
        if (unwritten.isEmpty()) {
            return null;
        }
        // Numbers count as printed where they tell the measures apart.
        List<String> printed = measures.stream().map(Measure::number).toList();
        boolean clear = !printed.contains("") && new HashSet<>(printed).size() == printed.size();
        PlayOrder order = new PlayOrder(List.copyOf(unwritten));
        return clear ? order.sections(printed) : order.shortForm();
    }
}
