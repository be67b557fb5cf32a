package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.cli.option.Choice;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.OptionList;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.instrument.Bellows;
import org.bellowscribe.instrument.BellowsMargin;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.LibraryEntry;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.Played;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.jspecify.annotations.Nullable;

/** What can be said about how to mark a tune. */
final class MarkOptions {

    private static final String PERCENT = "percent";

    private static final CommandOption<LibraryEntry> INSTRUMENT = new CommandOption<>(
                    "instrument",
                    "ID|FILE",
                    "The instrument; %s if not given.".formatted(InstrumentLibrary.DEFAULT_ID),
                    new LibraryName<>(InstrumentLibrary.library()))
            .in(OptionGroup.PLAYED);
    private static final CommandOption<List<String>> MARKS = new CommandOption<>(
                    "marks",
                    "LIST",
                    "The marks to print, with commas between; %s if not given. They change nothing of what is played."
                            .formatted(String.join(", ", Annotators.defaultIds())),
                    new MarkNames())
            .in(OptionGroup.PRINTED);
    private static final CommandOption<Played> PLAY = new CommandOption<>(
                    "play",
                    "LIST",
                    "What is played, with commas between; all if not given. Without air the air button is left alone.",
                    new PlayedReader())
            .in(OptionGroup.PLAYED);
    static final CommandOption<Manner> MANNER = new CommandOption<>(
                    "manner",
                    "ID|FILE",
                    "The manner of playing: what each rule charges; if not given, the one that is usual on the instrument, most"
                            + " often %s.".formatted(MannerLibrary.DEFAULT_ID),
                    new LibraryName<>(MannerLibrary.library()))
            .in(OptionGroup.PLAYED);
    private static final CommandOption<Times> TIMES = CommandOption.choice(
                    "times",
                    "again (if not given): good for playing again and again; once: the bellows are reset in between.",
                    new Choice<Times>().or("again", Times.AGAIN).or("once", Times.ONCE))
            .in(OptionGroup.PLAYED);
    private static final CommandOption<Integer> BELLOWS_MARGIN = new CommandOption<>(
                    "bellows-margin",
                    "PERCENT",
                    "For bellows that leak or are very small: so much more air for every note, and so much of the stroke unused;"
                            + " 0 if not given.",
                    new WholeNumber(0, BellowsMargin.MOST, PERCENT))
            .in(OptionGroup.PLAYED);
    /** Its limits are those of the instrument. */
    private static final CommandOption<String> START_OPEN = CommandOption.text(
                    "start-open",
                    "PERCENT",
                    "How far open the bellows are at the start, of the whole stroke, but for the ends, which are kept in reserve"
                            + " (8 to 92 on the usual box); where it is cheapest if not given.")
            .in(OptionGroup.PLAYED);

    /** What says how a score was marked. */
    static final List<CommandOption<?>> HOW_MARKED = List.of(
            INSTRUMENT,
            StyleOption.STYLE,
            MARKS,
            LeftHandOptions.PATTERN,
            LeftHandOptions.LEFT_HAND_PART,
            TIMES,
            BELLOWS_MARGIN);

    private MarkOptions() {}

    /** Returns all options of the command, in the order in which to list them. */
    static List<CommandOption<?>> all() {
        List<CommandOption<?>> all = new ArrayList<>(ofTunes());
        all.addAll(ofRuns());
        return OptionList.inOrder(all);
    }

    /** Returns those that are about a run as a whole. */
    private static List<CommandOption<?>> ofRuns() {
        List<CommandOption<?>> all = new ArrayList<>(ReportOptions.ALL);
        all.addAll(FileOptions.WRITING);
        all.addAll(KeepingOptions.ALL);
        all.add(SettingsOption.PRINT_SETTINGS);
        all.add(WatchOptions.WATCH);
        return all;
    }

    /** Returns those that may stand in a settings file: a question is asked once, not at every run. */
    static List<CommandOption<?>> ofSettings() {
        List<CommandOption<?>> all = new ArrayList<>(ofTunes());
        all.remove(SteeringOptions.EXPLAIN);
        return all;
    }

    /** Returns those that make the result of a tune what it is. */
    static List<CommandOption<?>> ofTunes() {
        List<CommandOption<?>> all = new ArrayList<>(List.of(
                INSTRUMENT,
                AlsoForOption.ALSO_FOR,
                StyleOption.STYLE,
                MARKS,
                PLAY,
                MANNER,
                LeftHandOptions.PATTERN,
                LeftHandOptions.LEFT_HAND_PART,
                TIMES,
                BELLOWS_MARGIN,
                START_OPEN));
        all.addAll(KeyOptions.ALL);
        all.addAll(LineOptions.ALL);
        all.addAll(SteeringOptions.ALL);
        all.addAll(OutputOptions.ALL);
        return all;
    }

    /** Returns the settings of a line. */
    static MarkSettings settings(CommandWords words) throws UsageException {
        return settings(words, words.has(MANNER) ? manner(words) : usual(entry(words)));
    }

    /** Returns the settings of a line in a manner of playing. */
    static MarkSettings settings(CommandWords words, Manner manner) throws UsageException {
        int margin = words.get(BELLOWS_MARGIN, 0);
        Instrument instrument =
                AlsoForOption.shared(words, BellowsMargin.on(entry(words).instrument(), margin), margin);
        Style style = StyleOption.style(words);
        List<String> marks = new ArrayList<>(words.get(MARKS, Annotators.defaultIds()));
        if (!instrument.alsoFor().isEmpty()) {
            marks.add(AlsoForOption.MARKS);
        }
        Played played = words.get(PLAY, Played.ALL);
        SolverOptions solver = new SolverOptions(
                        manner, words.get(TIMES, Times.AGAIN), played.air(), SolverOptions.USUAL_CELL_LIMIT)
                .startingAt(start(words, instrument.bellows()));
        return new MarkSettings(instrument, style, marks, played, solver, KeyOptions.of(words), LineOptions.of(words))
                .with(LeftHandOptions.patterns(words).inManner(manner.patterns()))
                .withLeftHandOf(LeftHandOptions.part(words))
                .with(SteeringOptions.of(words));
    }

    private static LibraryEntry entry(CommandWords words) {
        return words.get(INSTRUMENT, InstrumentLibrary.library().of(InstrumentLibrary.DEFAULT_ID));
    }

    /**
     * Returns the manner in which an instrument is usually played.
     *
     * @throws UsageException if the instrument's file names none that there is
     */
    static Manner usual(LibraryEntry entry) throws UsageException {
        String id = entry.manner();
        return id == null
                ? MannerLibrary.of(MannerLibrary.DEFAULT_ID)
                : LibraryName.find(MannerLibrary.library()::find, INSTRUMENT.name(), id);
    }

    /** Returns the manner of playing of a line. */
    static Manner manner(CommandWords words) {
        Manner given = words.get(MANNER);
        return given == null ? MannerLibrary.of(MannerLibrary.DEFAULT_ID) : given;
    }

    /** Returns a whole number of percent within the bellows, or null if any opening will do. */
    private static @Nullable Integer start(CommandWords words, Bellows bellows) throws UsageException {
        String text = words.get(START_OPEN);
        if (text == null) {
            return null;
        }
        int least = (int) Math.ceil(100 * bellows.lowest() / bellows.capacity());
        int most = (int) Math.floor(100 * bellows.highest() / bellows.capacity());
        return new WholeNumber(least, most, PERCENT, "on these bellows").read(START_OPEN.name(), text);
    }
}
