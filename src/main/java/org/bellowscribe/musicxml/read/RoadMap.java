package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.bellowscribe.score.Jump;
import org.bellowscribe.score.RoadRemark;
import org.bellowscribe.score.RoadSigns;

/** The signs of the order of play, gathered from all parts of the score. */
final class RoadMap {

    private final List<RoadSigns> signs = new ArrayList<>();
    private final Set<RoadRemark> remarks = new LinkedHashSet<>();
    private final Set<Integer> afterDoubleBars = new HashSet<>();
    private final TreeMap<Integer, Jump.Goal> goals = new TreeMap<>();
    // Coda signs by the measure that begins there, each with the measure at whose end a player would leave.
    private final TreeMap<Integer, Integer> codaSigns = new TreeMap<>();
    private final TreeMap<Integer, Integer> leaving = new TreeMap<>();

    /** Changes the signs of a measure; measures before the first are left out. */
    void change(int measure, UnaryOperator<RoadSigns> change) {
        if (measure < 0) {
            return;
        }
        while (signs.size() <= measure) {
            signs.add(RoadSigns.NONE);
        }
        signs.set(measure, change.apply(signs.get(measure)));
    }

    /** Adds a jump; two at one place, such as words and a sound, complete each other. */
    void jump(int measure, Jump jump) {
        change(measure, old -> old.withJump(old.jump() == null ? jump : merge(old.jump(), jump)));
    }

    private static Jump merge(Jump first, Jump second) {
        return new Jump(
                first.toStart() && second.toStart(),
                first.segno().isEmpty() ? second.segno() : first.segno(),
                first.goal() == Jump.Goal.OPEN ? second.goal() : first.goal(),
                first.withRepeats() || second.withRepeats());
    }

    /**
     * Adds words such as "al Fine" that stand apart from their "D.C.": where a jump stands in the same measure they say
     * where it ends, else "al Coda" is a departure to the coda.
     */
    void goal(int measure, Jump.Goal goal) {
        goals.put(measure, goal);
    }

    private void placeGoals() {
        goals.forEach((measure, goal) -> {
            Jump jump = measure < signs.size() ? signs.get(measure).jump() : null;
            if (jump != null) {
                jump(measure, new Jump(jump.toStart(), "", goal, false));
            } else if (goal == Jump.Goal.CODA) {
                toCoda(measure, "");
            } else {
                remark(measure, "The words \"al Fine\" in measure %d belong to no jump and are passed over.");
            }
        });
        goals.clear();
    }

    /** Adds a departure to a coda; a label counts more than none. */
    void toCoda(int measure, String label) {
        change(measure, old -> old.toCoda() == null || old.toCoda().isEmpty() ? old.withToCoda(label) : old);
    }

    /**
     * Adds a coda; a label counts more than none.
     *
     * @param departure the measure at whose end a player would leave if the sign meant that after all
     */
    void coda(int measure, String label, int departure) {
        leaving.putIfAbsent(measure, departure);
        change(measure, old -> old.coda() == null || old.coda().isEmpty() ? old.withCoda(label) : old);
    }

    /** Adds a segno; a label counts more than none. */
    void segno(int measure, String label) {
        change(measure, old -> old.segno() == null || old.segno().isEmpty() ? old.withSegno(label) : old);
    }

    /**
     * Remarks something odd about a sign.
     *
     * @param text one sentence; {@code %d} stands for the 1-based index of the measure
     */
    void remark(int measure, String text) {
        remarks.add(new RoadRemark(measure, text.formatted(measure + 1)));
    }

    /** Returns what was odd, in the order in which it was met. */
    List<RoadRemark> remarks() {
        return List.copyOf(remarks);
    }

    /** Adds a double bar line before a measure. */
    void doubleBar(int measure) {
        afterDoubleBars.add(measure);
    }

    /** Returns true if a double bar line stands before a measure. */
    boolean isAfterDoubleBar(int measure) {
        return afterDoubleBars.contains(measure);
    }

    /**
     * Adds a coda sign that stands alone: it may mark the coda itself or the place to leave for it.
     *
     * @param coda the measure that begins at the sign
     * @param departure the measure at whose end a player would leave
     */
    void codaSign(int coda, int departure) {
        codaSigns.putIfAbsent(coda, departure);
    }

    /**
     * Returns the signs of the measures.
     *
     * @param measures how many measures the melody has
     */
    List<RoadSigns> signs(int measures) {
        placeGoals();
        placeTwinCodas();
        placeCodaSigns();
        List<RoadSigns> all = new ArrayList<>(signs);
        while (all.size() < measures) {
            all.add(RoadSigns.NONE);
        }
        return all.subList(0, measures);
    }

    /** Returns the measure of the last coda that words or sounds name; -1 if none do. */
    private int lastCoda() {
        int last = signs.size() - 1;
        while (last >= 0 && signs.get(last).coda() == null) {
            last--;
        }
        return last;
    }

    // Of two codas with one label, and no departure, one leaves at the first and goes on at the last.
    private void placeTwinCodas() {
        boolean departure = signs.stream().anyMatch(each -> each.toCoda() != null);
        for (int i = 0; !departure && i < signs.size(); i++) {
            String label = signs.get(i).coda();
            if (label != null && leaving.containsKey(i) && hasCoda(i + 1, label)) {
                change(i, old -> old.withCoda(null));
                change(leaving.getOrDefault(i, i), old -> old.withToCoda(label));
                departure = true;
            }
        }
    }

    private boolean hasCoda(int from, String label) {
        return signs.subList(Math.min(from, signs.size()), signs.size()).stream()
                .anyMatch(each -> label.equals(each.coda()));
    }

    // Of two codas, by sign or word, and no departure, one leaves at the first sign and goes on at the last.
    private void placeCodaSigns() {
        boolean departure = signs.stream().anyMatch(each -> each.toCoda() != null);
        if (!departure && !codaSigns.isEmpty() && (codaSigns.size() > 1 || lastCoda() > codaSigns.firstKey())) {
            change(codaSigns.pollFirstEntry().getValue(), old -> old.withToCoda(""));
        }
        for (int measure : codaSigns.keySet()) {
            change(measure, old -> old.coda() != null || old.toCoda() != null ? old : old.withCoda(""));
        }
    }
}
