package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.batch.AtomicFile;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.instrument.Calibration;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.Timings;
import org.bellowscribe.instrument.file.InstrumentCopy;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Makes an instrument file of stop-watch timings. */
final class CalibrateCommand implements Command {

    private static final String INSTRUMENT = "instrument";
    private static final String PITCH = "pitch";
    private static final String NOTE = "note";
    private static final String WITH_BASS = "with-bass";
    private static final String WITH_CHORD = "with-chord";
    private static final String AIR = "air";
    private static final String LIGHT_AIR = "light-air";
    private static final String OUT = "out";
    private static final List<String> OTHERS = List.of(WITH_BASS, WITH_CHORD, AIR, LIGHT_AIR);
    private static final double LONGEST = 600;

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
    public Options options() {
        Options options = new Options();
        ValueOption.add(options, INSTRUMENT, "ID|FILE", "The instrument to start from.");
        ValueOption.add(options, PITCH, "NOTE", "The note that is held; A4 if not given.");
        ValueOption.add(options, NOTE, "SECONDS", "That note alone.");
        ValueOption.add(options, WITH_BASS, "SECONDS", "The same note with a bass.");
        ValueOption.add(options, WITH_CHORD, "SECONDS", "The same note with a chord.");
        ValueOption.add(options, AIR, "SECONDS", "The air button fully pressed, no note.");
        ValueOption.add(options, LIGHT_AIR, "SECONDS", "The air button lightly pressed, no note.");
        ValueOption.add(options, OUT, "FILE", "The instrument file to write.");
        return options;
    }

    @Override
    public ExitCode run(CommandLine line, Terminal terminal) throws UsageException {
        if (!line.getArgList().isEmpty()) {
            throw new UsageException("calibrate takes options only, not %s."
                    .formatted(line.getArgList().get(0)));
        }
        String name = required(line, INSTRUMENT, "Maybe add --instrument and the box of the library most like yours.");
        Instrument instrument = MarkCommand.look(name, INSTRUMENT, InstrumentLibrary::find);
        Timings timings = timings(line);
        Path out = FileOptions.path(required(line, OUT, "Maybe add --out my-box.xml."));
        if (out.toAbsolutePath()
                .normalize()
                .equals(Path.of(name).toAbsolutePath().normalize())) {
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
        report(line, calibration, out, terminal);
        return ExitCode.ALL_DONE;
    }

    private static void write(String name, Calibration calibration, Path out) throws DiagnosedException {
        InstrumentCopy copy = InstrumentLibrary.copy(name);
        for (Calibration.Figure figure : calibration.figures()) {
            copy.with(figure.element(), figure.name(), value(figure.after()), "stop-watch: " + figure.why());
        }
        AtomicFile.write(out, copy.text().getBytes(StandardCharsets.UTF_8));
    }

    private static void report(CommandLine line, Calibration calibration, Path out, Terminal terminal) {
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
                .filter(option -> !line.hasOption(option))
                .forEach(option -> terminal.out().println("not timed: --" + option + "; its figure stays as it was"));
        terminal.out().println(out + " written. Use it: mark ... --instrument " + out);
    }

    private static String value(double figure) {
        return "%.2f".formatted(figure);
    }

    private static Timings timings(CommandLine line) throws UsageException {
        required(line, NOTE, "Maybe hold A4 from fully open to closed and time it.");
        Double note = seconds(line, NOTE);
        if (note == null) {
            throw new IllegalStateException("The option (note) must be there.");
        }
        return new Timings(
                pitch(line.getOptionValue(PITCH, "A4")),
                note,
                seconds(line, WITH_BASS),
                seconds(line, WITH_CHORD),
                seconds(line, AIR),
                seconds(line, LIGHT_AIR));
    }

    private static String required(CommandLine line, String option, String advice) throws UsageException {
        String value = line.getOptionValue(option);
        if (value == null) {
            throw new UsageException("calibrate needs --%s.%n  %s".formatted(option, advice));
        }
        return value;
    }

    private static Pitch pitch(String name) throws UsageException {
        try {
            return Pitch.parse(name);
        } catch (IllegalArgumentException e) {
            throw new UsageException(
                    "--pitch takes a note with its octave, such as A4 or F#4, not %s.".formatted(name));
        }
    }

    private static @Nullable Double seconds(CommandLine line, String option) throws UsageException {
        String text = line.getOptionValue(option);
        if (text == null) {
            return null;
        }
        if (text.matches("\\d{1,3}([.,]\\d{1,3})?")) {
            double seconds = Double.parseDouble(text.replace(',', '.'));
            if (seconds >= 1 && seconds <= LONGEST) {
                return seconds;
            }
        }
        throw new UsageException(
                "--%s takes seconds from 1 to 600, such as 17 or 17.5, not %s.".formatted(option, text));
    }
}
