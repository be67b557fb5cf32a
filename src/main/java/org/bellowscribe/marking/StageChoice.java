package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.exercise.ExerciseChoice;
import org.bellowscribe.exercise.Order;
import org.bellowscribe.stage.Stage;
import org.bellowscribe.stage.StageTune;

/**
 * Which stages of each tune to write.
 *
 * @param stages the stages, each once, in the order in which they are learned
 * @param tempos tempos in percent of that of the tune, for the stages that have one of their own
 * @param scores true to write each as a score of its own
 * @param parts true to write all as parts of one score
 * @param exercises which exercises to write
 * @param sounds true to write how each sounds
 */
public record StageChoice(
        List<Stage> stages,
        SortedMap<Stage, Integer> tempos,
        boolean scores,
        boolean parts,
        ExerciseChoice exercises,
        boolean sounds) {

    /** None. */
    public static final StageChoice NONE =
            new StageChoice(List.of(), new TreeMap<>(), false, false, ExerciseChoice.NONE, false);

    /** How the name of the score ends that has the stages as its parts. */
    public static final String PARTS = ".stages.musicxml";

    /** Sorts the stages and copies the tempos. */
    public StageChoice {
        stages = stages.stream().distinct().sorted().toList();
        tempos = Collections.unmodifiableSortedMap(new TreeMap<>(tempos));
    }

    /** Returns the tempo of a stage in percent of that of the tune. */
    public int percent(Stage stage) {
        return tempos.getOrDefault(stage, StageTune.FULL);
    }

    /** Returns true if some stage leaves out what the rules of thumb guess. */
    public boolean fades() {
        return stages.contains(Stage.FADING) || stages.contains(Stage.AS_PLAYED);
    }

    /** Returns how the name of the score of a stage ends. */
    public static String ending(Stage stage) {
        return "." + stage.id() + ".musicxml";
    }

    /** Returns how the name of the score of exercises ends. */
    public static String ending(Order order) {
        return order == Order.BLOCKED ? ".exercises.musicxml" : ".exercises-mixed.musicxml";
    }

    /** Returns how the name of the file ends that has the sound of a stage. */
    static String soundEnding(Stage stage) {
        return "." + stage.id() + ".mid";
    }

    /** Returns true if how a stage sounds is to be written: in that of the bellows alone nothing does. */
    boolean sounds(Stage stage) {
        return sounds && stage != Stage.BELLOWS;
    }

    /** Returns how the names of all files end that may be written beside a result. */
    public List<String> endings() {
        List<String> all = new ArrayList<>();
        if (scores) {
            stages.forEach(stage -> all.add(ending(stage)));
        }
        if (parts) {
            all.add(PARTS);
        }
        exercises.orders().forEach(order -> all.add(ending(order)));
        stages.stream().filter(this::sounds).forEach(stage -> all.add(soundEnding(stage)));
        return all;
    }
}
