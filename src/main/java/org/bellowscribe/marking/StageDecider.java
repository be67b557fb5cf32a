package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Task;
import org.bellowscribe.stage.Stage;
import org.bellowscribe.stage.StageTune;
import org.jspecify.annotations.Nullable;

/**
 * Decides the stages of a tune from the decision of the whole: every button, direction, finger, place of the hand and sound
 * of the left hand is fixed as it is there, and only the air is decided anew, for what sounds in the stage and for its tempo.
 */
public final class StageDecider {

    private static final int STEP = 5;

    /**
     * What came of deciding a stage.
     *
     * @param tune the tune as it is played in the stage; null if it cannot be
     * @param remarks why not
     */
    public record Staged(@Nullable StageTune tune, List<Diagnostic> remarks) {

        /** Copies the list. */
        public Staged {
            remarks = List.copyOf(remarks);
        }
    }

    /** What sounds, and how fast: stages that agree in it are decided alike. */
    private record Sounding(boolean melody, boolean leftHand, int percent) {}

    private final DecidedTune whole;
    private final Map<Sounding, Optional<Attempt>> attempts = new HashMap<>();

    private record Attempt(DecidedTune tune, List<Diagnostic> broken) {}

    /**
     * Begins with a tune.
     *
     * @param whole the tune as it was decided, with both hands
     */
    public StageDecider(DecidedTune whole) {
        this.whole = whole;
    }

    /**
     * Decides a stage.
     *
     * @param percent the tempo in percent of that of the tune
     */
    public Staged decide(Stage stage, int percent) {
        if (lacks(stage)) {
            return refused("The stage %s is not written: nothing sounds in it.".formatted(stage.id()), "");
        }
        Attempt attempt = attempt(stage, percent);
        if (attempt != null) {
            List<Diagnostic> broken = new ArrayList<>(attempt.broken());
            broken.addAll(stage == Stage.BELLOWS ? SilentBellows.replay(attempt.tune()) : List.of());
            return broken.isEmpty()
                    ? new Staged(new StageTune(stage, percent, attempt.tune()), List.of())
                    : new Staged(null, broken);
        }
        int other = nearestTempo(stage, percent);
        return refused(
                "The stage %s is not written: at %d percent of the tempo the bellows do not last, played as the whole tune is."
                        .formatted(stage.id(), percent),
                other > 0 ? "Maybe --stage-tempo %s=%d.".formatted(stage.id(), other) : "");
    }

    private boolean lacks(Stage stage) {
        boolean melody = whole.solution().steps().stream()
                .anyMatch(step -> !step.buttons().isEmpty());
        boolean leftHand = whole.solution().steps().stream()
                .flatMap(step -> step.leftHand().stream())
                .anyMatch(play -> play.sound() != null);
        return (stage.melody() && !melody) || (stage == Stage.LEFT_HAND && !leftHand);
    }

    private static Staged refused(String text, String advice) {
        String[] advices = advice.isEmpty() ? new String[0] : new String[] {advice};
        return new Staged(null, List.of(Diagnostic.warning(DiagnosticCode.STAGE, Place.FILE, text, advices)));
    }

    // The tempo nearest to that of the tune is looked for from the one that was asked for.
    private int nearestTempo(Stage stage, int percent) {
        int way = percent < StageTune.FULL ? STEP : -STEP;
        int tried = percent - Math.floorMod(percent, STEP) + (way > 0 ? STEP : 0);
        for (; way > 0 ? tried <= StageTune.FULL : tried >= StageTune.FULL; tried += way) {
            if (attempt(stage, tried) != null) {
                return tried;
            }
        }
        return 0;
    }

    private @Nullable Attempt attempt(Stage stage, int percent) {
        return attempts.computeIfAbsent(new Sounding(stage.melody(), stage.leftHand(), percent), this::solve)
                .orElse(null);
    }

    private Optional<Attempt> solve(Sounding sounding) {
        if (sounding.equals(new Sounding(true, true, StageTune.FULL))) {
            return Optional.of(new Attempt(whole, List.of()));
        }
        Tune tune = slower(whole.tune(), sounding.percent());
        SolverOptions options = whole.task().options().withPins(pins(sounding));
        Task task = new Task(
                tune,
                whole.instrument(),
                sounding.leftHand() ? whole.task().wanted() : List.of(),
                options,
                whole.transposedBy());
        Playing playing = new Playing(new Played(sounding.melody(), sounding.leftHand(), options.airButton()));
        Solution solution = Solver.attempt(playing.played(task));
        if (solution == null) {
            return Optional.empty();
        }
        DecidedTune decided = new DecidedTune(
                playing.played(task),
                tune,
                slower(whole.written(), sounding.percent()),
                whole.notesKept(),
                playing.onMelody(solution, tune),
                Steered.NOT);
        return Optional.of(new Attempt(decided, playing.replay(task, solution)));
    }

    private static Tune slower(Tune tune, int percent) {
        Tempo tempo = new Tempo(
                tune.tempo().quartersPerMinute() * percent / StageTune.FULL,
                tune.tempo().stated());
        return tune.at(tempo);
    }

    private Pins pins(Sounding stage) {
        List<Pin> pins = new ArrayList<>();
        whole.solution().steps().forEach(step -> pins.add(pin(step, stage)));
        return new Pins(pins);
    }

    private static Pin pin(Step step, Sounding stage) {
        Pin pin = Pin.at(step.event().index()).direction(step.direction());
        if (stage.melody()) {
            pin = pin.handOn(step.handOn());
            for (int i = 0; i < step.buttons().size(); i++) {
                pin = pin.button(i, step.buttons().get(i).id())
                        .finger(i, step.fingers().get(i));
            }
        }
        for (int i = 0; stage.leftHand() && i < step.leftHand().size(); i++) {
            LeftHandPlay play = step.leftHand().get(i);
            pin = pin.leftHand(
                    i, play.sound() == null ? Pin.SILENCE : play.sound().label());
        }
        return pin;
    }
}
