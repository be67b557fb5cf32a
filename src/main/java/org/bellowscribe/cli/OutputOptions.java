package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.batch.Beside;
import org.bellowscribe.batch.Grades;
import org.bellowscribe.batch.Outputs;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;

/** What {@code mark} writes or tells besides the marked score. */
final class OutputOptions {

    static final CommandOption<Boolean> RECORD = CommandOption.flag(
                    "record", "Write every decision beside the score, as data: NAME.record.json.")
            .in(OptionGroup.BESIDES);

    static final CommandOption<Boolean> WORDS = CommandOption.flag(
                    "words",
                    "Write each tune in words beside the score, a line a note, in the language of the style: NAME.txt.")
            .in(OptionGroup.BESIDES);

    static final CommandOption<Boolean> DRAWING = CommandOption.flag(
                    "drawing",
                    "Draw beside the score, for print: what the bellows do (NAME%s) and which buttons are used how often (NAME%s)."
                            .formatted(Beside.BELLOWS.ending(), Beside.BUTTONS.ending()))
            .in(OptionGroup.BESIDES);

    static final CommandOption<Boolean> MIDI = CommandOption.flag(
                    "midi",
                    "Write beside the score how it sounds, with every repeat and a measure counted in: NAME%s; with --stages each stage too."
                            .formatted(Beside.SOUND.ending()))
            .in(OptionGroup.BESIDES);

    private static final CommandOption<Boolean> DIFFICULTY = CommandOption.flag(
                    "difficulty", "Print under each tune how difficult it is and why, term by term.")
            .in(OptionGroup.BESIDES);
    private static final CommandOption<Grading> GRADING = new CommandOption<>(
                    "grading",
                    "ID|FILE",
                    "What the terms of difficulty weigh; %s if not given.".formatted(GradingLibrary.DEFAULT_ID),
                    new LibraryName<>(GradingLibrary.library()))
            .in(OptionGroup.BESIDES);

    /** What is written beside a score, so that it needs a folder. */
    static final List<CommandOption<?>> BESIDE = List.of(RECORD, WORDS, DRAWING, MIDI, SteeringOptions.ALTERNATIVES);

    /** The options in the order of the help. */
    static final List<CommandOption<?>> ALL = all();

    private OutputOptions() {}

    private static List<CommandOption<?>> all() {
        List<CommandOption<?>> all =
                new ArrayList<>(List.of(RECORD, WORDS, DRAWING, MIDI, DIFFICULTY, GRADING, LeftHandOptions.WRITTEN));
        all.addAll(StageOptions.ALL);
        return List.copyOf(all);
    }

    /** Returns what to write besides the sheet. */
    static Outputs of(CommandWords words) throws UsageException {
        return new Outputs(
                SteeringOptions.pins(words),
                !ReportOptions.writesNoScore(words),
                words.has(RECORD),
                new Grades(words.has(DIFFICULTY), words.get(GRADING, GradingLibrary.usual())),
                LeftHandOptions.written(words),
                StageOptions.of(words, words.has(MIDI)),
                beside(words),
                null);
    }

    private static List<Beside> beside(CommandWords words) {
        List<Beside> beside = new ArrayList<>();
        if (words.has(WORDS)) {
            beside.add(Beside.words(StyleOption.style(words)));
        }
        if (words.has(DRAWING)) {
            beside.addAll(List.of(Beside.BELLOWS, Beside.BUTTONS));
        }
        if (words.has(MIDI)) {
            beside.add(Beside.SOUND);
        }
        return beside;
    }
}
