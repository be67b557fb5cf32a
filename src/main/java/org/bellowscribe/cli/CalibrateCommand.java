package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.instrument.Calibration;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.Timings;
import org.bellowscribe.instrument.file.InstrumentCopy;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.theory.Pitch;

/** Makes an instrument file of stop-watch timings. */
final class CalibrateCommand implements Command {

    private static final Seconds SECONDS = new Seconds();

    private static final CommandOption<String> INSTRUMENT =
            CommandOption.text("instrument", "ID|FILE", "The instrument to start from.");
    private static final CommandOption<Pitch> PITCH =
            new CommandOption<>("pitch", "NOTE", "The note that is held; A4 if not given.", new PitchName());
    private static final CommandOption<Double> NOTE = timing("note", "That note alone.");
    private static final CommandOption<Double> WITH_BASS = timing("with-bass", "The same note with a bass.");
    private static final CommandOption<Double> WITH_CHORD = timing("with-chord", "The same note with a chord.");
    private static final CommandOption<Double> AIR = timing("air", "The air button fully pressed, no note.");
    private static final CommandOption<Double> LIGHT_AIR =
            timing("light-air", "The air button lightly pressed, no note.");
    private static final CommandOption<Path> OUT =
            new CommandOption<>("out", "FILE", "The instrument file to write.", new FilePath());
    private static final List<CommandOption<Double>> OTHERS = List.of(WITH_BASS, WITH_CHORD, AIR, LIGHT_AIR);

    private static CommandOption<Double> timing(String name, String description) {
        return new CommandOption<>(name, "SECONDS", description, SECONDS);
    }

    @Override
    public String name() {
        return "calibrate";
    }

    @Override
    public String summary() {
        return "Turns stop-watch timings of your bellows, each from fully open to closed at usual loudness and without"
                + " force, into an instrument file of your own.";
    }

    @Override
    public String usage() {
        return "--instrument ID|FILE --note SECONDS --out FILE";
    }

    @Override
    public List<CommandOption<?>> options() {
        return List.of(INSTRUMENT, PITCH, NOTE, WITH_BASS, WITH_CHORD, AIR, LIGHT_AIR, OUT);
    }

    @Override
    public ExitCode run(CommandWords words, Terminal terminal) throws UsageException {
        if (!words.rest().isEmpty()) {
            throw new UsageException("calibrate takes options only, not %s."
                    .formatted(words.rest().get(0)));
        }
        String name = required(words, INSTRUMENT, "Maybe add --instrument and the box of the library most like yours.");
        Instrument instrument = LibraryName.find(InstrumentLibrary::find, INSTRUMENT.name(), name);
        Timings timings = timings(words);
        Path out = required(words, OUT, "Maybe add --out my-box.xml.");
        if (out.toAbsolutePath()
                .normalize()
                .equals(FilePath.of(name).toAbsolutePath().normalize())) {
            throw new UsageException("The result would take the place of the input %s.".formatted(name));
        }
        Calibration calibration = Calibration.of(instrument, timings);
        calibration.remarks().forEach(remark -> terminal.err().println(remark.print("calibrate")));
        if (calibration.remarks().stream().anyMatch(remark -> remark.severity() == Severity.ERROR)) {
            return ExitCode.SOME_FAILED;
        }
        try {
            write(name, calibration, out);
        } catch (DiagnosedException e) {
            for (Diagnostic remark : e.diagnostics()) {
                terminal.err().println(remark.print(out.toString()));
            }
            return ExitCode.SOME_FAILED;
        }
        report(words, calibration, out, terminal);
        return ExitCode.ALL_DONE;
    }

    private static void write(String name, Calibration calibration, Path out) throws DiagnosedException {
        InstrumentCopy copy = InstrumentLibrary.copy(name);
        for (Calibration.Figure figure : calibration.figures()) {
            copy.with(figure.element(), figure.name(), value(figure.after()), "stop-watch: " + figure.why());
        }
        AtomicFile.write(out, copy.text().getBytes(StandardCharsets.UTF_8));
    }

    private static void report(CommandWords words, Calibration calibration, Path out, Terminal terminal) {
        for (Calibration.Figure figure : calibration.figures()) {
            terminal.out()
                    .printf(
                            "%-25s %6s -> %-6s (half a second makes it %s to %s): %s%n",
                            figure.name(),
                            value(figure.before()),
                            value(figure.after()),
                            value(figure.least()),
                            Double.isInfinite(figure.most()) ? "anything" : value(figure.most()),
                            figure.why());
        }
        OTHERS.stream()
                .filter(option -> !words.has(option))
                .forEach(option ->
                        terminal.out().println("not timed: --" + option.name() + "; its figure stays as it was"));
        terminal.out().println(out + " written. Use it: mark ... --instrument " + out);
    }

    private static String value(double figure) {
        return "%.2f".formatted(figure);
    }

    private static Timings timings(CommandWords words) throws UsageException {
        return new Timings(
                words.get(PITCH, Pitch.parse("A4")),
                required(words, NOTE, "Maybe hold A4 from fully open to closed and time it."),
                words.get(WITH_BASS),
                words.get(WITH_CHORD),
                words.get(AIR),
                words.get(LIGHT_AIR));
    }

    private static <T> T required(CommandWords words, CommandOption<T> option, String advice) throws UsageException {
        T value = words.get(option);
        if (value == null) {
            throw new UsageException("calibrate needs --%s.%n  %s".formatted(option.name(), advice));
        }
        return value;
    }
}
