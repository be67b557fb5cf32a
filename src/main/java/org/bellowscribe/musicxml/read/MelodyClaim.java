package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.bellowscribe.theory.Fraction;

/**
 * How much says that a part is the melody: its name, clef, range, lyrics, single notes and rests, in points. One of them
 * alone decides nothing: a bass may have a name that sings, and a piano may play one note at a time. Weights: common
 * practice, no source; they are held by scores made for the tests.
 */
final class MelodyClaim {

    private static final double F_CLEF = -3;
    private static final double C_CLEF = -1;
    private static final double LYRICS = 3;
    private static final double ONLY_LYRICS = 6;
    private static final double ENOUGH_LYRICS = 0.25;
    private static final double ALL_CHORDS = -5;
    private static final double ALL_RESTS = -3;
    private static final double FEW_NOTES = -1;
    private static final int LOW = 60;
    private static final double PER_LOW_SEMITONE = -1.0 / 3;
    private static final double LOWEST_RANGE = -4;
    // Above the second A over the staff a part doubles or adorns.
    private static final int HIGH = 84;
    private static final double ABOVE = -4;
    private static final double PER_HIGHER_SEMITONE = 0.25;
    private static final double MOST_HIGHER = 2;

    private final PartContent part;
    private final int staff;
    private final List<WrittenNote> notes = new ArrayList<>();
    // The moments of each measure where notes begin.
    private final Map<Integer, Map<Fraction, Moment>> moments = new HashMap<>();

    private record Moment(int count, double quarters) {

        Moment and(Moment other) {
            return new Moment(count + other.count, Math.max(quarters, other.quarters));
        }
    }

    /**
     * Makes the claim of a part.
     *
     * @param staff the staff that is looked at
     * @param wanted which of its notes may be the melody
     */
    MelodyClaim(PartContent part, int staff, Predicate<WrittenNote> wanted) {
        this.part = part;
        this.staff = staff;
        for (int i = 0; i < part.measures().size(); i++) {
            for (WrittenNote note : part.measures().get(i).notes()) {
                if (note.isNote() && note.staff() == staff && wanted.test(note)) {
                    notes.add(note);
                    moments.computeIfAbsent(i, any -> new HashMap<>())
                            .merge(note.onset(), new Moment(1, note.duration().toDouble()), Moment::and);
                }
            }
        }
    }

    /** What all parts together do, for comparing: the most of each, the mean pitch, and how many are sung. */
    record Others(int mostOnsets, double mostTime, double meanHeight, int sung) {}

    /** Returns the points by what speaks, in words that follow "because of". */
    Map<String, Double> points(Others others) {
        Map<String, Double> points = new LinkedHashMap<>();
        points.put("its name", NameClaim.points(part.name()));
        points.put("its lyrics", isSung() ? others.sung() == 1 ? ONLY_LYRICS : LYRICS : 0);
        points.put("its clef", clef());
        points.put("its single notes", ALL_CHORDS * (1 - aloneShare()));
        points.put("its range", range(others.meanHeight()));
        double silent = 1 - time() / Math.max(1, others.mostTime());
        double few = 1 - (double) onsets() / Math.max(1, others.mostOnsets());
        points.put("its few rests", ALL_RESTS * silent + FEW_NOTES * few);
        return points;
    }

    boolean isSung() {
        return part.staves().lyrics().getOrDefault(staff, 0) >= Math.max(1, ENOUGH_LYRICS * notes.size());
    }

    private double clef() {
        if (part.staves().isBass(staff)) {
            return F_CLEF;
        }
        return part.staves().isMiddle(staff) ? C_CLEF : 0;
    }

    private double range(double meanHeight) {
        double height = height();
        double low = Math.max(LOWEST_RANGE, Math.min(0, PER_LOW_SEMITONE * (LOW - height)));
        double higher = PER_HIGHER_SEMITONE * (height - meanHeight);
        double top = height > HIGH ? ABOVE : 0;
        return low + top + Math.max(-MOST_HIGHER, Math.min(MOST_HIGHER, higher));
    }

    double height() {
        return MelodyLine.height(notes);
    }

    int onsets() {
        return moments.values().stream().mapToInt(Map::size).sum();
    }

    /** Returns how long its notes sound, in quarters; those of a chord count once. */
    double time() {
        return moments.values().stream()
                .flatMap(measure -> measure.values().stream())
                .mapToDouble(Moment::quarters)
                .sum();
    }

    private double aloneShare() {
        long alone = moments.values().stream()
                .flatMap(measure -> measure.values().stream())
                .filter(moment -> moment.count() == 1)
                .count();
        return (double) alone / Math.max(1, onsets());
    }
}
