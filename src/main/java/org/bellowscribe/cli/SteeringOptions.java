package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.marking.Steering;
import org.bellowscribe.solver.explain.Alternatives;
import org.jspecify.annotations.Nullable;

/** What a teacher fixes and asks. */
final class SteeringOptions {

    private static final String NO_PINS = "none";

    static final CommandOption<Optional<Path>> PINS = new CommandOption<Optional<Path>>(
                    "pins",
                    "FILE|none",
                    "What is fixed in the one tune; NAME.pins.xml beside each score if not given; none: nothing.",
                    (option, text) ->
                            text.equals(NO_PINS) ? Optional.empty() : Optional.of(new FilePath().read(option, text)))
            .in(OptionGroup.PLAYED);
    static final CommandOption<Boolean> KEEP_EDITS = CommandOption.flag(
                    "keep-edits",
                    "Of scores that are marked already, keep every mark that was changed by hand, and put %s behind it; if not given, those that end in it are kept."
                            .formatted(SignedMarks.SIGN))
            .in(OptionGroup.PLAYED);
    static final CommandOption<Steering.Question> EXPLAIN = new CommandOption<>(
                    "explain",
                    "MEASURE[:NOTE|:rREST]",
                    "Say of a note, a rest, or of all of a measure, what every other way to play it would cost; without --out"
                            + " nothing is written.",
                    new QuestionReader())
            .in(OptionGroup.BESIDES);
    static final CommandOption<Integer> ALTERNATIVES = new CommandOption<>(
                    "alternatives",
                    "K",
                    "Also write up to K clearly different ways to play each tune, as NAME.2.musicxml and so on.",
                    new WholeNumber(0, Alternatives.MOST))
            .in(OptionGroup.BESIDES);

    static final List<CommandOption<?>> ALL = List.of(PINS, KEEP_EDITS, EXPLAIN, ALTERNATIVES);

    private SteeringOptions() {}

    /** Returns how many other ways to play each tune are asked for; 0 if none. */
    static int alternatives(CommandWords words) {
        return words.get(ALTERNATIVES, 0);
    }

    /** Tells whether the pins beside each score count. */
    static boolean usesPinsBeside(CommandWords words) {
        return !words.has(PINS);
    }

    /** Returns true if the line asks why a note is played so. */
    static boolean asks(CommandWords words) {
        return words.has(EXPLAIN);
    }

    static Steering of(CommandWords words) throws UsageException {
        Optional<Path> pins = words.get(PINS);
        boolean keeps = pins == null || pins.isPresent();
        if (!keeps && words.has(KEEP_EDITS)) {
            throw new UsageException(
                    "--keep-edits keeps what --pins none passes over.%n  Maybe drop one of them.".formatted());
        }
        return new Steering(keeps, words.has(KEEP_EDITS), words.get(EXPLAIN), alternatives(words));
    }

    /** Returns where the pins of the one tune are; null if that is not said. */
    static @Nullable Path pins(CommandWords words) {
        Optional<Path> pins = words.get(PINS);
        return pins == null ? null : pins.orElse(null);
    }

    /** Refuses an option about one tune where there are more. */
    static void requireOneTune(CommandWords words, int tunes) throws UsageException {
        Optional<Path> pins = words.get(PINS);
        refuseMore(pins != null && pins.isPresent(), PINS, tunes);
        refuseMore(words.has(EXPLAIN), EXPLAIN, tunes);
    }

    private static void refuseMore(boolean given, CommandOption<?> option, int tunes) throws UsageException {
        if (given && tunes > 1) {
            throw new UsageException("--%s is about one tune, and these are %d.%n  Maybe name one score."
                    .formatted(option.name(), tunes));
        }
    }
}
