package org.bellowscribe.compare;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.report.CsvLine;

/** Tells which way is which, for those who read the choices of a page that does not. */
public final class CompareKey {

    private CompareKey() {}

    /** Returns one line a tune, in the order of the page, as comma-separated values. */
    public static String of(List<ComparedTune> tunes) {
        StringBuilder lines = new StringBuilder(CsvLine.of(List.of("place", "file", "title", "a", "b")));
        for (int i = 0; i < tunes.size(); i++) {
            ComparedTune tune = tunes.get(i);
            List<String> fields = new ArrayList<>(List.of(String.valueOf(i + 1)));
            fields.add(CsvLine.text(tune.file()));
            fields.add(CsvLine.text(tune.title()));
            fields.add(CsvLine.text(tune.a().name()));
            fields.add(CsvLine.text(tune.b().name()));
            lines.append(CsvLine.of(fields));
        }
        return lines.toString();
    }
}
