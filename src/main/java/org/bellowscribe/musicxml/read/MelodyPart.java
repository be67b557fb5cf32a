package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Chooses the part of the melody: the one with the best {@link MelodyClaim}, and of equal ones the first. Parts with few
 * notes are passed over, and in a part of several staves the first that is no bass counts.
 */
final class MelodyPart {

    /** A part or staff with less than this share of the notes of the fullest is no melody. */
    private static final double LEAST = 0.1;
    /** Parts are mostly written in the order of their weight. */
    private static final double PER_PLACE = 0.4;

    private static final double MOST_PLACES = 1.6;
    /** What decides by less than this goes without saying. */
    private static final double WORTH_SAYING = 0.5;

    private final List<PartContent> parts;
    private final Predicate<WrittenNote> wanted;

    MelodyPart(List<PartContent> parts, Predicate<WrittenNote> wanted) {
        this.parts = parts;
        this.wanted = wanted;
    }

    /**
     * The choice.
     *
     * @param part 0-based index of the part
     * @param why what spoke for it against the next best, such as {@code because of its name and its lyrics}
     */
    record Chosen(int part, String why) {}

    /** A part that may be the melody. */
    private record Candidate(int part, Map<String, Double> points, int place) {

        double sum() {
            double order = Math.min(MOST_PLACES, place * PER_PLACE);
            return points.values().stream().mapToDouble(Double::doubleValue).sum() - order;
        }
    }

    /** Returns the choice; at least one part must have a wanted note. */
    Chosen choose() {
        List<Integer> full = full();
        List<MelodyClaim> claims = full.stream()
                .map(i -> new MelodyClaim(parts.get(i), homeStaff(i), wanted))
                .toList();
        MelodyClaim.Others others = new MelodyClaim.Others(
                claims.stream().mapToInt(MelodyClaim::onsets).max().orElse(0),
                claims.stream().mapToDouble(MelodyClaim::time).max().orElse(0),
                claims.stream().mapToDouble(MelodyClaim::height).average().orElse(0),
                (int) claims.stream().filter(MelodyClaim::isSung).count());
        Candidate best = null;
        Candidate next = null;
        for (int i = 0; i < claims.size(); i++) {
            Candidate each = new Candidate(full.get(i), claims.get(i).points(others), i);
            if (best == null || each.sum() > best.sum()) {
                next = best;
                best = each;
            } else if (next == null || each.sum() > next.sum()) {
                next = each;
            }
        }
        if (best == null) {
            throw new IllegalStateException("Of %d parts one must have a note.".formatted(parts.size()));
        }
        return new Chosen(best.part(), next == null ? "the only part with many notes" : why(best, next));
    }

    private List<Integer> full() {
        List<Integer> counts = parts.stream()
                .map(part -> (int) part.notes().filter(wanted).count())
                .toList();
        int most = counts.stream().mapToInt(Integer::intValue).max().orElse(0);
        List<Integer> full = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (counts.get(i) >= Math.max(1, LEAST * most)) {
                full.add(i);
            }
        }
        return full;
    }

    /** Returns the staff of a part on which a melody would stand: the first that is no bass and not nearly empty. */
    int homeStaff(int part) {
        PartContent content = parts.get(part);
        List<Integer> staves = content.notes()
                .filter(wanted)
                .map(WrittenNote::staff)
                .distinct()
                .sorted()
                .toList();
        List<Integer> high =
                staves.stream().filter(staff -> !content.staves().isBass(staff)).toList();
        List<Integer> among = high.isEmpty() ? staves : high;
        long most =
                among.stream().mapToLong(staff -> count(content, staff)).max().orElse(0);
        return among.stream()
                .filter(staff -> count(content, staff) >= LEAST * most)
                .findFirst()
                .orElse(1);
    }

    private long count(PartContent part, int staff) {
        return part.notes().filter(wanted).filter(note -> note.staff() == staff).count();
    }

    private static String why(Candidate best, Candidate next) {
        List<String> reasons = best.points().entrySet().stream()
                .filter(entry -> lead(entry, next) >= WORTH_SAYING)
                .sorted((one, other) -> Double.compare(lead(other, next), lead(one, next)))
                .map(Map.Entry::getKey)
                .toList();
        if (reasons.isEmpty()) {
            return "the first of those that may be";
        }
        int last = reasons.size() - 1;
        String before = String.join(", ", reasons.subList(0, last));
        return "because of " + (before.isEmpty() ? "" : before + " and ") + reasons.get(last);
    }

    private static double lead(Map.Entry<String, Double> points, Candidate next) {
        return points.getValue() - next.points().getOrDefault(points.getKey(), 0.0);
    }
}
