package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.stage.Stage;
import org.bellowscribe.stage.StageTune;

/**
 * Which stages of each tune to write.
 *
 * @param stages the stages, each once, in the order in which they are learned
 * @param tempos tempos in percent of that of the tune, for the stages that have one of their own
 * @param scores true to write each as a score of its own
 * @param parts true to write all as parts of one score
 */
public record StageChoice(List<Stage> stages, SortedMap<Stage, Integer> tempos, boolean scores, boolean parts) {

    /** None. */
    public static final StageChoice NONE = new StageChoice(List.of(), new TreeMap<>(), false, false);

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

    /** Returns how the name of the score of a stage ends. */
    public static String ending(Stage stage) {
        return "." + stage.id() + ".musicxml";
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
        return all;
    }
}
