package org.bellowscribe.cli;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.batch.Jobs;
import org.bellowscribe.batch.Outputs;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.BellowsMargin;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.marking.Played;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;

/** Marks tunes. */
final class MarkCommand implements Command {

    private static final String INSTRUMENT = "instrument";
    private static final String STYLE = "style";
    private static final String MARKS = "marks";
    private static final String TIMES = "times";
    private static final String BELLOWS_MARGIN = "bellows-margin";
    static final String RECORD = "record";

    @Override
    public String name() {
        return "mark";
    }

    @Override
    public String summary() {
        return "Decides how to play each tune and writes the marks into a copy of its score.";
    }

    @Override
    public String usage() {
        return "INPUT... --out DIR";
    }

    @Override
    public Options options() {
        Options options = new Options();
        ValueOption.add(
                options,
                INSTRUMENT,
                "ID|FILE",
                "The instrument; %s if not given.".formatted(InstrumentLibrary.DEFAULT_ID));
        ValueOption.add(
                options, STYLE, "ID|FILE", "Labels and signs; %s if not given.".formatted(StyleLibrary.DEFAULT_ID));
        ValueOption.add(
                options,
                MARKS,
                "LIST",
                "The marks to print, with commas between; %s if not given. They change nothing of what is played."
                        .formatted(String.join(",", Annotators.defaultIds())));
        PlayOption.addTo(options);
        MannerOption.addTo(options);
        PatternOption.addTo(options);
        LeftHandPartOption.addTo(options);
        ValueOption.add(
                options,
                TIMES,
                "again|once",
                "again (if not given): good for playing again and again; once: the bellows are reset in between.");
        ValueOption.add(
                options,
                BELLOWS_MARGIN,
                "PERCENT",
                "For bellows that leak or are very small: so much more air for every note, and so much of the stroke"
                        + " unused; 0 to 50, 0 if not given.");
        StartOption.addTo(options);
        KeyOptions.addTo(options);
        LineOptions.addTo(options);
        SteeringOptions.addTo(options);
        options.addOption(Option.builder()
                .longOpt(RECORD)
                .desc("Write every decision beside the score, as data: NAME.record.json.")
                .get());
        LeftHandOptions.addTo(options);
        FileOptions.addTo(options);
        return options;
    }

    @Override
    public ExitCode run(CommandLine line, Terminal terminal) throws UsageException {
        return FileOptions.run(
                line,
                SteeringOptions.alternatives(line),
                Jobs.mark(settings(line), outputs(line)),
                new MarkReport(!SteeringOptions.onlyAsks(line), !line.hasOption(SteeringOptions.PINS)),
                terminal);
    }

    private static MarkSettings settings(CommandLine line) throws UsageException {
        Instrument instrument = BellowsMargin.on(
                look(line, INSTRUMENT, InstrumentLibrary.DEFAULT_ID, InstrumentLibrary::find), margin(line));
        Style style = look(line, STYLE, StyleLibrary.DEFAULT_ID, StyleLibrary::find);
        List<String> marks = look(line, MARKS, String.join(",", Annotators.defaultIds()), MarkCommand::marks);
        Played played = PlayOption.of(line);
        SolverOptions solver = new SolverOptions(
                        MannerOption.of(line), times(line), played.air(), SolverOptions.USUAL_CELL_LIMIT)
                .startingAt(StartOption.of(line, instrument.bellows()));
        return new MarkSettings(instrument, style, marks, played, solver, KeyOptions.of(line), LineOptions.of(line))
                .with(PatternOption.of(line).inManner(solver.manner().patterns()))
                .withLeftHandOf(LeftHandPartOption.of(line))
                .with(SteeringOptions.of(line));
    }

    private static Outputs outputs(CommandLine line) throws UsageException {
        return new Outputs(
                SteeringOptions.pins(line),
                !SteeringOptions.onlyAsks(line),
                line.hasOption(RECORD),
                LeftHandOptions.of(line));
    }

    private static List<String> marks(String list) throws DiagnosedException {
        List<String> ids = Stream.of(list.split(",")).map(String::strip).toList();
        Annotators.find(ids);
        return ids;
    }

    private static int margin(CommandLine line) throws UsageException {
        String text = line.getOptionValue(BELLOWS_MARGIN, "0");
        if (!text.matches("\\d{1,2}") || Integer.parseInt(text) > BellowsMargin.MOST) {
            throw new UsageException("--%s takes a whole number of percent from 0 to %d, not %s."
                    .formatted(BELLOWS_MARGIN, BellowsMargin.MOST, text));
        }
        return Integer.parseInt(text);
    }

    private static Times times(CommandLine line) throws UsageException {
        String text = line.getOptionValue(TIMES, "again");
        return switch (text) {
            case "again" -> Times.AGAIN;
            case "once" -> Times.ONCE;
            default -> throw new UsageException("--times takes again or once, not %s.".formatted(text));
        };
    }

    /** A look-up by name that explains itself when it fails. */
    @FunctionalInterface
    interface Finder<T> {
        T find(String name) throws DiagnosedException;
    }

    private static <T> T look(CommandLine line, String option, String usual, Finder<T> finder) throws UsageException {
        return look(line.getOptionValue(option, usual), option, finder);
    }

    /** Returns what an option names, or says what is wrong with the name. */
    static <T> T look(String name, String option, Finder<T> finder) throws UsageException {
        try {
            return finder.find(name);
        } catch (DiagnosedException e) {
            StringBuilder lines = new StringBuilder();
            for (Diagnostic diagnostic : e.diagnostics()) {
                lines.append(lines.isEmpty() ? "" : "\n").append(diagnostic.print("--" + option + " " + name));
            }
            throw new UsageException(lines.toString());
        }
    }
}
