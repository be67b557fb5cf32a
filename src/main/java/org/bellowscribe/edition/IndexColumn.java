package org.bellowscribe.edition;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.report.TuneSummary;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Key;
import org.bellowscribe.words.SpokenNotes;

/** The columns of an index, the same in every format. */
@SuppressWarnings("ImmutableEnumChecker") // What makes a value of a column keeps nothing.
enum IndexColumn {
    /** Title of the tune. */
    TUNE(BookText.TUNE, IndexEntry::title),
    /** Empty, for the number of the page: who engraves the book writes it. */
    PAGE(BookText.PAGE, entry -> ""),
    /** How it begins. */
    BEGINS(BookText.BEGINS, entry -> FirstNotes.of(entry.tune().tune().onSheet())),
    /** Keys of the sheet. */
    KEY(BookText.KEY, entry -> distinct(entry, measure -> entry.key(measure.key()))),
    /** Times. */
    TIME(BookText.TIME, entry -> distinct(entry, measure -> measure.time().toString())),
    /** Grade from 1 to 9. */
    GRADE(
            BookText.GRADE,
            entry -> String.valueOf(entry.tune().difficulty().grade().number())),
    /** How many new things. */
    NEW_COUNT(BookText.NEW_COUNT, entry -> String.valueOf(entry.tune().news().size())),
    /** Reversals in one playing. */
    REVERSALS(BookText.REVERSALS, entry -> String.valueOf(entry.summary().reversals())),
    /** Places where the air button is pressed. */
    AIR(BookText.AIR_MARKS, entry -> String.valueOf(entry.summary().airMarks())),
    /** How far open the bellows are at the start. */
    OPENING(BookText.OPENING, entry -> entry.summary().startPercent() + " %"),
    /** What is new. */
    NEW(BookText.NEWS, IndexEntry::newWords),
    /** Why it has its grade. */
    WHY(
            BookText.WHY,
            entry -> Grades.why(entry.tune().difficulty(), entry.style().book())),
    /** Notes for the pupil. */
    NOTES(BookText.NOTES, entry -> String.join(" ", entry.tune().notes())),
    /** What there is to warn of. */
    PROBLEMS(BookText.PROBLEMS, entry -> String.join(" ", entry.tune().problems())),
    /** Name of the sheet's file. */
    FILE(BookText.FILE, entry -> entry.tune().file()),
    /** Names of its further sheets. */
    FURTHER(BookText.FURTHER, entry -> String.join(", ", entry.tune().further()));

    private final BookText heading;
    // Functions without state.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<IndexEntry, String> value;

    IndexColumn(BookText heading, Function<IndexEntry, String> value) {
        this.heading = heading;
        this.value = value;
    }

    /**
     * A tune with its figures.
     *
     * @param tune the tune
     * @param summary its figures
     * @param newWords what is new in it, in words
     * @param style the style of the index
     */
    record IndexEntry(EditionTune tune, TuneSummary summary, String newWords, Style style) {

        static IndexEntry of(EditionTune tune, Style style) {
            String words = NewWords.all(tune.news(), style, tune.tune().instrument());
            return new IndexEntry(tune, TuneSummary.of(tune.tune()), words, style);
        }

        String key(Key key) {
            return new SpokenNotes(style.spoken()).key(key);
        }

        String title() {
            return tune.title();
        }
    }

    /** Returns what stands above the column in the language of a style. */
    String heading(Style style) {
        return style.book().say(heading);
    }

    /** Returns what stands in the column at a tune; may be empty. */
    String of(IndexEntry entry) {
        return value.apply(entry);
    }

    private static String distinct(IndexEntry entry, Function<Measure, String> property) {
        Tune sheet = entry.tune().tune().onSheet();
        List<Measure> measures = sheet.measures();
        return sheet.playOrder().measures().stream()
                .map(measures::get)
                .filter(measure -> measure.length().isPositive())
                .map(property)
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
