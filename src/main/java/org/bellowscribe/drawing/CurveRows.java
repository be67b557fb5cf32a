package org.bellowscribe.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.replay.PlayedMeasure;

/**
 * Parts one playing of a tune into rows of about so many measures that begin with a section wherever it fits, so that
 * sections that are repeated stand below each other.
 */
final class CurveRows {

    // Room for a pick-up that belongs to no full measure.
    private static final double MORE = 0.5;

    private final List<Row> rows = new ArrayList<>();
    private final double longest;
    private List<List<PlayedMeasure>> row = new ArrayList<>();

    /**
     * A row.
     *
     * @param sections the sections in it, or what of them is in it; none is empty
     */
    record Row(List<List<PlayedMeasure>> sections) {

        PlayedMeasure first() {
            return sections.get(0).get(0);
        }

        PlayedMeasure last() {
            List<PlayedMeasure> section = sections.get(sections.size() - 1);
            return section.get(section.size() - 1);
        }

        double seconds() {
            return last().ends() - first().starts();
        }
    }

    private CurveRows(double longest) {
        this.longest = longest;
    }

    /**
     * Returns the rows of some sections.
     *
     * @param measures so many measures of usual length have room in a row
     */
    static List<Row> of(List<List<PlayedMeasure>> sections, int measures) {
        double[] seconds = sections.stream()
                .flatMap(List::stream)
                .mapToDouble(PlayedMeasure::seconds)
                .filter(each -> each > 0)
                .sorted()
                .toArray();
        double usual = seconds.length == 0 ? 1 : seconds[seconds.length / 2];
        CurveRows rows = new CurveRows((measures + MORE) * usual);
        sections.forEach(rows::add);
        rows.turn();
        return rows.rows;
    }

    private void add(List<PlayedMeasure> section) {
        double starts = section.get(0).starts();
        double seconds = section.get(section.size() - 1).ends() - starts;
        if (!row.isEmpty() && new Row(row).seconds() + seconds > longest) {
            turn();
        }
        // A section too long for a row is parted evenly.
        double part = seconds / Math.max(1, Math.ceil(seconds / longest));
        List<PlayedMeasure> piece = new ArrayList<>();
        for (PlayedMeasure measure : section) {
            double middle = (measure.starts() + measure.ends()) / 2;
            if (!piece.isEmpty() && middle - starts > part) {
                row.add(piece);
                turn();
                piece = new ArrayList<>();
                starts += part;
            }
            piece.add(measure);
        }
        row.add(piece);
    }

    private void turn() {
        if (!row.isEmpty()) {
            rows.add(new Row(row));
            row = new ArrayList<>();
        }
    }
}
