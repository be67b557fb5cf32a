package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.exercise.ChangeTimes;
import org.bellowscribe.exercise.ExerciseChoice;
import org.bellowscribe.exercise.Order;
import org.bellowscribe.marking.StageChoice;
import org.bellowscribe.stage.Stage;

/** The stages in which a tune is learned. */
final class StageOptions {

    private static final String SCORES = "scores";
    private static final String PARTS = "parts";

    static final CommandOption<List<String>> STAGES = new CommandOption<>(
                    "stages",
                    "LIST",
                    "Sheets for the stages of learning beside the score, NAME.STAGE.musicxml, all from one decision; with commas"
                            + " between: %s.".formatted(summaries()),
                    new WordList(Arrays.stream(Stage.values()).map(Stage::id).toList()))
            .in(OptionGroup.BESIDES);
    static final CommandOption<SortedMap<Stage, Integer>> TEMPO = new CommandOption<>(
                    "stage-tempo",
                    "LIST",
                    "The tempo of the stages in percent of that of the tune: 75 for all but as-played, right-hand=50,both=75 for"
                            + " some; 100 if not given. The air is decided for it.",
                    new StageTempos())
            .in(OptionGroup.BESIDES);
    static final CommandOption<List<String>> AS = new CommandOption<>(
                    "stages-as",
                    "LIST",
                    "scores (if not given): each stage a score of its own; parts: all as parts of one score,"
                            + " NAME.stages.musicxml; or scores,parts.",
                    new WordList(List.of(SCORES, PARTS)))
            .in(OptionGroup.BESIDES);

    static final CommandOption<List<String>> EXERCISES = new CommandOption<>(
                    "exercises",
                    "LIST",
                    "Exercises from the tune, NAME.exercises.musicxml: the measure of each air mark, the hardest spots, the left hand"
                            + " alone. blocked: each several times; mixed: in turn, NAME.exercises-mixed.musicxml; or blocked,mixed.",
                    new WordList(Arrays.stream(Order.values()).map(Order::id).toList()))
            .in(OptionGroup.BESIDES);

    static final CommandOption<ChangeTimes> CHANGE_TIMES = new CommandOption<>(
                    "change-times",
                    "FILE",
                    "With --exercises: how long changes of the hand take the pupil, by the stop-watch; an estimate if not given.",
                    new ChangeTimesFile())
            .in(OptionGroup.BESIDES);

    static final List<CommandOption<?>> ALL = List.of(STAGES, TEMPO, AS, EXERCISES, CHANGE_TIMES);

    private StageOptions() {}

    private static String summaries() {
        return Arrays.stream(Stage.values()).map(Stage::id).collect(Collectors.joining(", "));
    }

    /**
     * Returns what a line asks for.
     *
     * @param sound true if it asks how each stage sounds too
     */
    static StageChoice of(CommandWords words, boolean sound) throws UsageException {
        List<Stage> stages = new ArrayList<>();
        for (String id : words.get(STAGES, List.of())) {
            Stage stage = Stage.of(id);
            if (stage != null) {
                stages.add(stage);
            }
        }
        if (stages.isEmpty()) {
            requireStages(words);
        }
        requireFiles(words, STAGES);
        requireFiles(words, EXERCISES);
        List<String> as = words.get(AS, List.of(SCORES));
        StageChoice choice = new StageChoice(
                stages,
                words.get(TEMPO, new TreeMap<>()),
                as.contains(SCORES),
                as.contains(PARTS),
                exercises(words),
                sound);
        if (stages.contains(Stage.LEFT_HAND)
                && choice.scores()
                && LeftHandOptions.written(words).sheet()) {
            throw new UsageException("--stages left-hand and --%s sheet write the same file.%n  Maybe leave one out."
                    .formatted(LeftHandOptions.WRITTEN.name()));
        }
        return choice;
    }

    private static ExerciseChoice exercises(CommandWords words) throws UsageException {
        List<Order> orders = Arrays.stream(Order.values())
                .filter(order -> words.get(EXERCISES, List.of()).contains(order.id()))
                .toList();
        if (words.has(CHANGE_TIMES) && orders.isEmpty()) {
            throw new UsageException("--%s says something of exercises, and none are asked for.%n  Maybe add --%s."
                    .formatted(CHANGE_TIMES.name(), EXERCISES.name()));
        }
        return new ExerciseChoice(orders, words.get(CHANGE_TIMES, ChangeTimes.usual()));
    }

    private static void requireStages(CommandWords words) throws UsageException {
        for (CommandOption<?> option : List.of(TEMPO, AS)) {
            if (words.has(option)) {
                throw new UsageException("--%s says something of stages, and none are asked for.%n  Maybe add --%s."
                        .formatted(option.name(), STAGES.name()));
            }
        }
    }

    private static void requireFiles(CommandWords words, CommandOption<?> option) throws UsageException {
        FileOptions.refuseWithPipe(words, option);
        if (words.has(option) && words.has(FileOptions.IN_PLACE)) {
            throw new UsageException(
                    "--%s goes with --out: beside your scores the sheets would be taken for some of them."
                            .formatted(option.name()));
        }
        ReportOptions.requireFolder(words, option);
    }
}
