package org.bellowscribe.edition;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.bellowscribe.report.DifficultyText;
import org.bellowscribe.report.TuneSummary;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;

/** The columns of an index, the same in every format. */
@SuppressWarnings("ImmutableEnumChecker") // What makes a value of a column keeps nothing.
enum IndexColumn {
    /** Title of the tune. */
    TUNE("tune", IndexEntry::title),
    /** Empty, for the number of the page: who engraves the book writes it. */
    PAGE("page", entry -> ""),
    /** How it begins. */
    BEGINS("begins", entry -> FirstNotes.of(entry.tune().tune().onSheet())),
    /** Keys of the sheet. */
    KEY("key", entry -> distinct(entry, measure -> measure.key().name())),
    /** Times. */
    TIME("time", entry -> distinct(entry, measure -> measure.time().toString())),
    /** Grade from 1 to 9. */
    GRADE("grade", entry -> String.valueOf(entry.tune().difficulty().grade().number())),
    /** How many new things. */
    NEW_COUNT("new things", entry -> String.valueOf(entry.tune().news().size())),
    /** Reversals in one playing. */
    REVERSALS("reversals", entry -> String.valueOf(entry.summary().reversals())),
    /** Places where the air button is pressed. */
    AIR("air marks", entry -> String.valueOf(entry.summary().airMarks())),
    /** How far open the bellows are at the start. */
    OPENING("open at start", entry -> entry.summary().startPercent() + " %"),
    /** What is new. */
    NEW("new in this tune", IndexEntry::newWords),
    /** Why it has its grade. */
    WHY("difficulty", entry -> DifficultyText.why(entry.tune().difficulty())),
    /** Notes for the pupil. */
    NOTES("for the pupil", entry -> String.join(" ", entry.tune().notes())),
    /** What there is to warn of. */
    PROBLEMS("problems", entry -> String.join(" ", entry.tune().problems())),
    /** Name of the sheet's file. */
    FILE("file", entry -> entry.tune().file()),
    /** Names of its further sheets. */
    FURTHER("further sheets", entry -> String.join(", ", entry.tune().further()));

    private final String heading;
    // Functions without state.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Function<IndexEntry, String> value;

    IndexColumn(String heading, Function<IndexEntry, String> value) {
        this.heading = heading;
        this.value = value;
    }

    /**
     * A tune with its figures.
     *
     * @param tune the tune
     * @param summary its figures
     * @param newWords what is new in it, in words
     */
    record IndexEntry(EditionTune tune, TuneSummary summary, String newWords) {

        static IndexEntry of(EditionTune tune) {
            int rows = tune.tune().instrument().rows();
            return new IndexEntry(tune, TuneSummary.of(tune.tune()), NewWords.all(tune.news(), tune.style(), rows));
        }

        String title() {
            return tune.title();
        }
    }

    /** Returns what stands above the column. */
    String heading() {
        return heading;
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
