package org.bellowscribe.edition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.report.CsvLine;

/** The index as comma-separated values: a line a tune, those that are not in the edition last. */
public final class IndexCsv {

    private static final List<IndexColumn> COLUMNS = List.of(IndexColumn.values());

    private IndexCsv() {}

    /** Returns the table, each line with its line end. */
    public static String of(Edition edition) {
        Style style = edition.style();
        List<String> headings = new ArrayList<>(List.of(style.book().say(BookText.NUMBER)));
        COLUMNS.forEach(column -> headings.add(column.heading(style)));
        StringBuilder csv = new StringBuilder(CsvLine.of(headings));
        int number = 0;
        for (EditionTune tune : edition.tunes()) {
            number++;
            IndexColumn.IndexEntry entry = IndexColumn.IndexEntry.of(tune, style);
            List<String> fields = new ArrayList<>(List.of(String.valueOf(number)));
            COLUMNS.forEach(column -> fields.add(CsvLine.text(column.of(entry))));
            csv.append(CsvLine.of(fields));
        }
        edition.refused().forEach(refused -> csv.append(CsvLine.of(missing(refused, style))));
        return csv.toString();
    }

    private static List<String> missing(Edition.Refused refused, Style style) {
        String[] fields = new String[1 + COLUMNS.size()];
        Arrays.fill(fields, "");
        fields[1 + COLUMNS.indexOf(IndexColumn.TUNE)] = CsvLine.text(refused.title());
        fields[1 + COLUMNS.indexOf(IndexColumn.PROBLEMS)] =
                CsvLine.text(style.book().say(BookText.MISSING) + ": " + refused.reason());
        fields[1 + COLUMNS.indexOf(IndexColumn.FILE)] = CsvLine.text(refused.file());
        return List.of(fields);
    }
}
