package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.book.Book;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.edition.EditionTune;
import org.bellowscribe.edition.FrontPage;
import org.bellowscribe.edition.NewWords;
import org.bellowscribe.edition.TextLines;
import org.bellowscribe.marking.SheetLines;
import org.bellowscribe.stage.Stage;
import org.bellowscribe.syllabus.Thing;

/** The lines of words that a book asks for on each sheet: the teacher's notes, what is new, the signs. */
final class EditionText {

    private static final int LINE = 72;

    private EditionText() {}

    /** Returns the lines of a tune; on the sheet of a stage stands what is new in what is played there. */
    static SheetLines lines(EditionTune tune, Book book) {
        Map<Stage, List<String>> stages = new EnumMap<>(Stage.class);
        for (Stage stage : book.prints().contains(Book.Print.NEW) ? Stage.values() : new Stage[0]) {
            SortedSet<Thing> news = new TreeSet<>(tune.news());
            news.removeIf(thing -> !isPlayed(thing.kind(), stage));
            stages.put(stage, NewWords.lines(news, tune.style(), tune.tune().instrument()));
        }
        return new SheetLines(wholeLines(tune, book), stages);
    }

    private static boolean isPlayed(Thing.Kind kind, Stage stage) {
        return switch (kind) {
            case BUTTON, ROW_CHANGE, HAND_PLACE, RHYTHM -> stage.melody();
            case BASS, CHORD -> stage.leftHand();
            case AIR -> stage.melody() && stage.leftHand();
            case REVERSAL, TIME, KEY -> true;
        };
    }

    private static List<String> wholeLines(EditionTune tune, Book book) {
        List<String> lines = new ArrayList<>();
        if (book.prints().contains(Book.Print.NOTES)) {
            tune.notes().forEach(note -> lines.addAll(TextLines.wrap(note, LINE)));
        }
        if (book.prints().contains(Book.Print.NEW)) {
            lines.addAll(NewWords.lines(tune.news(), tune.style(), tune.tune().instrument()));
        }
        if (book.prints().contains(Book.Print.LEGEND)) {
            lines.addAll(legend(tune));
        }
        return lines;
    }

    private static List<String> legend(EditionTune tune) {
        try {
            List<String> entries =
                    FrontPage.legend(tune).stream().map(EditionText::words).toList();
            String all = String.join("; ", entries);
            return entries.isEmpty()
                    ? List.of()
                    : TextLines.wrap(tune.style().book().say(BookText.SIGNS_LINE, "things", all), LINE);
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Marks that were printed must be known.", e);
        }
    }

    private static String words(LegendEntry entry) {
        return entry.sign() + " " + entry.meaning();
    }
}
