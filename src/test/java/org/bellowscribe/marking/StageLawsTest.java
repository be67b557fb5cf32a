package org.bellowscribe.marking;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bellowscribe.Shared;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.SchemaCheck;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.replay.Replay;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.stage.Stage;
import org.bellowscribe.stage.StageSheets;
import org.bellowscribe.stage.StageTune;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The laws of stages: no stage contradicts the whole tune, each can be played, each sheet is valid and comes out again as it
 * is said. Of the stages in which both hands sound one stands for all at each tempo: they are decided alike.
 */
class StageLawsTest {

    // The laws hold however much the search may do.
    private static final long LITTLE_WORK = 20_000;

    private static final Map<Stage, List<String>> LINES = Arrays.stream(Stage.values())
            .collect(Collectors.toMap(stage -> stage, stage -> List.of("New: a line & what is new")));

    private int written;
    private int refused;

    private static MarkSettings settings(String manner) throws Exception {
        return new MarkSettings(
                InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID),
                StyleLibrary.find(StyleLibrary.DEFAULT_ID),
                Annotators.defaultIds(),
                Played.ALL,
                new SolverOptions(MannerLibrary.of(manner), Times.AGAIN, true, LITTLE_WORK),
                KeyChoice.AS_WRITTEN,
                ReadingOptions.DEFAULT);
    }

    private void checkLaws(List<Path> scores, MarkSettings settings) throws Exception {
        for (Path score : scores) {
            ReadTune read = new TuneReader(settings).read(Files.readAllBytes(score), "tune", null);
            if (new TuneDecider(settings).decide(read) instanceof Decision.Decided decided) {
                ScoreDocument sheet = read.document().withoutMarks();
                StageSheets sheets = new StageSheets(sheet, settings.style(), settings.marks(), LINES);
                checkStages(score, decided.tune(), sheets, sheet);
            }
        }
    }

    private void checkStages(Path score, DecidedTune whole, StageSheets sheets, ScoreDocument sheet) throws Exception {
        StageDecider decider = new StageDecider(whole);
        List<StageTune> all = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            StageDecider.Staged staged = decider.decide(stage, stage == Stage.AS_PLAYED ? 100 : 75);
            StageTune tune = staged.tune();
            String name = score.getFileName() + " " + stage.id();
            if (tune == null) {
                assertTrue(staged.remarks().get(0).text().contains("do not last"), name + staged.remarks());
                refused++;
                continue;
            }
            written++;
            all.add(tune);
            assertEquals(List.of(), contradictions(whole.solution(), tune), name);
            assertEquals(List.of(), replayed(tune), name);
            ScoreDocument printed = sheets.score(tune);
            assertEquals(List.of(), SchemaCheck.check(printed.text()), name);
            checkStrip(stage, printed, sheet, whole.tune().part());
        }
        ScoreDocument parts = sheets.parts(all);
        assertEquals(List.of(), SchemaCheck.check(parts.text()), score + " parts");
        assertArrayEquals(sheet.encode(), parts.withoutMarks().encode(), score + " parts");
    }

    private static List<?> replayed(StageTune tune) {
        return Replay.check(tune.tune().task().tune(), tune.tune().instrument(), unvoiced(tune.tune()));
    }

    // The replay plays the events as they sound: silent where the melody is not played.
    private static Solution unvoiced(DecidedTune tune) {
        Solution solution = tune.solution();
        List<Step> steps = new ArrayList<>();
        solution.steps()
                .forEach(step -> steps.add(
                        step.with(tune.task().tune().events().get(step.event().index()))));
        return new Solution(steps, solution.again(), solution.cost(), solution.unlike());
    }

    private static List<String> contradictions(Solution whole, StageTune stage) {
        List<String> found = new ArrayList<>();
        for (Step step : stage.tune().solution().steps()) {
            Step other = whole.steps().get(step.event().index());
            boolean melody = !stage.stage().melody()
                    || (step.buttons().equals(other.buttons())
                            && step.fingers().equals(other.fingers())
                            && step.handOn() == other.handOn());
            boolean left = !stage.stage().leftHand() || sounds(step).equals(sounds(other));
            if (step.direction() != other.direction() || !melody || !left) {
                found.add(step + " but " + other);
            }
        }
        return found;
    }

    private static List<String> sounds(Step step) {
        return step.leftHand().stream()
                .map(play -> play.button() == null ? "" : play.button().id())
                .toList();
    }

    private static void checkStrip(Stage stage, ScoreDocument printed, ScoreDocument sheet, String part) {
        ScoreDocument stripped = printed.withoutMarks();
        if (stage.isScoreWithMarks()) {
            assertArrayEquals(sheet.encode(), stripped.encode());
        } else if (stage == Stage.LEFT_HAND) {
            assertEquals(sheet.withCueNotes(part).text(), stripped.text());
        } else {
            assertEquals(printed.text(), stripped.text());
        }
    }

    private static List<Path> samples(int step) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("samples", "book"))) {
            List<Path> all = files.sorted().toList();
            return IntStream.range(0, all.size())
                    .filter(i -> i % step == step - 1)
                    .mapToObj(all::get)
                    .toList();
        }
    }

    @Test
    void everySixthSampleKeepsTheLaws() throws Exception {
        checkLaws(samples(6), settings(MannerLibrary.DEFAULT_ID));
        assertEquals(4 * Stage.values().length, written);
    }

    @Tag("whole-library")
    @Test
    void samplesKeepTheLaws() throws Exception {
        checkLaws(samples(1), settings(MannerLibrary.DEFAULT_ID));
        assertTrue(written > 140 && refused < 10, written + " written, " + refused + " refused");
    }

    @Tag("whole-library")
    @Test
    void sharedTunesKeepTheLawsInEveryManner() throws Exception {
        for (String manner : MannerLibrary.library().ids()) {
            checkLaws(Shared.scores("corpus/tunes"), settings(manner));
        }
        assertTrue(written > 1000, written + " written, " + refused + " refused");
    }
}
