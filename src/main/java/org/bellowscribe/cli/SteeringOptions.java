package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.marking.Steering;
import org.bellowscribe.solver.explain.Alternatives;
import org.jspecify.annotations.Nullable;

/** What a teacher fixes and asks. */
final class SteeringOptions {

    static final String PINS = "pins";
    private static final String KEEP_EDITS = "keep-edits";
    private static final String EXPLAIN = "explain";
    static final String ALTERNATIVES = "alternatives";
    private static final String NO_PINS = "none";

    /** The options that are about one tune. */
    static final List<String> FOR_ONE_TUNE = List.of(PINS, EXPLAIN);

    private static final Pattern NOTE = Pattern.compile("(.+?)(?::([1-9]\\d{0,2}))?");

    private SteeringOptions() {}

    static void addTo(Options options) {
        ValueOption.add(
                options,
                PINS,
                "FILE|none",
                "What is fixed in the one tune; NAME.pins.xml beside each score if not given; none: nothing.");
        options.addOption(Option.builder()
                .longOpt(KEEP_EDITS)
                .desc("Of scores that are marked already, keep every mark that was changed by hand, and put %s behind"
                                .formatted(SignedMarks.SIGN)
                        + " it; if not given, those that end in it are kept.")
                .get());
        ValueOption.add(
                options,
                EXPLAIN,
                "MEASURE[:NOTE]",
                "Say of a note, or of each note of a measure, what every other way to play it would cost; without"
                        + " --out nothing is written.");
        ValueOption.add(
                options,
                ALTERNATIVES,
                "K",
                "Also write up to K clearly different ways to play each tune, as NAME.2.musicxml and so on; 0 to %d."
                        .formatted(Alternatives.MOST));
    }

    /** Returns how many other ways to play each tune are asked for; 0 if none. */
    static int alternatives(CommandLine line) throws UsageException {
        String text = line.getOptionValue(ALTERNATIVES, "0");
        if (!text.matches("\\d") || Integer.parseInt(text) > Alternatives.MOST) {
            throw new UsageException(
                    "--%s takes a whole number from 0 to %d, not %s.".formatted(ALTERNATIVES, Alternatives.MOST, text));
        }
        return Integer.parseInt(text);
    }

    /** Returns true if the line is a question that needs no folder for results. */
    static boolean onlyAsks(CommandLine line) {
        return line.hasOption(EXPLAIN)
                && !line.hasOption(FileOptions.OUT)
                && !line.hasOption(FileOptions.IN_PLACE)
                && !line.getArgList().contains(FileOptions.PIPE);
    }

    static Steering of(CommandLine line) throws UsageException {
        String pins = line.getOptionValue(PINS);
        boolean keeps = !NO_PINS.equals(pins);
        if (onlyAsks(line) && line.hasOption(MarkCommand.RECORD)) {
            throw new UsageException("--record needs a folder.\n  Maybe add --out and a folder.");
        }
        if (!keeps && line.hasOption(KEEP_EDITS)) {
            throw new UsageException(
                    "--keep-edits keeps what --pins none passes over.%n  Maybe drop one of them.".formatted());
        }
        int alternatives = alternatives(line);
        if (onlyAsks(line) && alternatives > 0) {
            throw new UsageException("--%s needs a folder.%n  Maybe add --out and a folder.".formatted(ALTERNATIVES));
        }
        return new Steering(keeps, line.hasOption(KEEP_EDITS), question(line), alternatives);
    }

    /** Returns where the pins of the one tune are; null if that is not said. */
    static @Nullable Path pins(CommandLine line) throws UsageException {
        String pins = line.getOptionValue(PINS);
        return pins == null || NO_PINS.equals(pins) ? null : FileOptions.path(pins);
    }

    private static Steering.@Nullable Question question(CommandLine line) throws UsageException {
        String text = line.getOptionValue(EXPLAIN);
        if (text == null) {
            return null;
        }
        Matcher matcher = NOTE.matcher(text);
        if (!matcher.matches() || matcher.group(1).contains(":")) {
            throw new UsageException(
                    "--explain takes a measure, or a measure and a note such as 12:3, not %s.".formatted(text));
        }
        String note = matcher.group(2);
        return new Steering.Question(matcher.group(1), note == null ? 0 : Integer.parseInt(note));
    }

    /** Refuses an option about one tune where there are more. */
    static void check(CommandLine line, int tunes) throws UsageException {
        for (String option : FOR_ONE_TUNE) {
            boolean one = option.equals(PINS) && NO_PINS.equals(line.getOptionValue(PINS));
            if (tunes > 1 && line.hasOption(option) && !one) {
                throw new UsageException(
                        "--%s is about one tune, and these are %d.%n  Maybe name one score.".formatted(option, tunes));
            }
        }
    }
}
