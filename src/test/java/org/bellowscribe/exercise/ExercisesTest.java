package org.bellowscribe.exercise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.marking.SampleTune;
import org.bellowscribe.musicxml.SchemaCheck;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class ExercisesTest {

    private static final DecidedTune GATE = SampleTune.decided("the-leaning-gate");

    private static <E extends Exercise> List<E> found(Class<E> kind) {
        return Exercises.of(GATE, ChangeTimes.usual()).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void everyMeasureWithAirIsAnExerciseOfItsOwn() {
        long measures = GATE.solution().steps().stream()
                .filter(step -> step.air() != AirUse.NONE)
                .map(step -> step.event().measure())
                .distinct()
                .count();
        assertEquals(measures, found(Exercise.AirMeasure.class).size());
        assertTrue(measures > 0);
    }

    @Test
    void chunksAreFourToSixNotesOnEndAndShareNone() {
        List<Exercise.Chunk> chunks = found(Exercise.Chunk.class);
        assertEquals(3, chunks.size());
        int notes = 0;
        for (Exercise.Chunk chunk : chunks) {
            List<Integer> events = chunk.events();
            assertTrue(events.size() >= 4 && events.size() <= 6, chunk.toString());
            assertEquals(events.get(0) + events.size() - 1, events.get(events.size() - 1));
            notes += events.size();
        }
        assertEquals(
                notes,
                chunks.stream()
                        .flatMap(chunk -> chunk.events().stream())
                        .distinct()
                        .count());
    }

    @Test
    void aChunkStartsAtTheTempoThatItsHardestChangeAllows() {
        for (Exercise.Chunk chunk : found(Exercise.Chunk.class)) {
            double lack = 0;
            for (int i = 1; i < chunk.events().size(); i++) {
                int event = chunk.events().get(i);
                var before = GATE.solution().steps().get(event - 1);
                Change change = Change.between(before, GATE.solution().steps().get(event));
                lack = Math.max(
                        lack, ChangeTimes.usual().of(change) / GATE.tune().seconds(before.event()));
            }
            assertEquals((int) Math.floor(100 / Math.max(1, lack)), chunk.percent());
        }
    }

    @Test
    void mixedOrderTakesOneOfEachKindInTurn() {
        List<String> kinds = Order.MIXED.of(Exercises.of(GATE, ChangeTimes.usual())).stream()
                .map(each -> each.getClass().getSimpleName())
                .toList();
        assertEquals(List.of("AirMeasure", "Chunk", "LeftHandRun", "Chunk", "Chunk"), kinds);
    }

    @Test
    void theSheetIsValidAndNamesOpeningsAndCounts() throws Exception {
        ScoreDocument sheet = sheet(ChangeTimes.usual());
        assertEquals(List.of(), SchemaCheck.check(sheet.text()));
        assertTrue(sheet.text().contains("<words>1 (from 2), pull+light on 1, open 1/3</words>"), sheet.text());
        assertTrue(sheet.text().contains("<words>outer, hand 5, open 1/2</words>"), sheet.text());
    }

    private static ScoreDocument sheet(ChangeTimes times) throws Exception {
        return ExerciseSheet.write(
                        GATE,
                        StyleLibrary.find(StyleLibrary.DEFAULT_ID),
                        List.of("buttons", "left-hand"),
                        new ExerciseChoice(List.of(Order.BLOCKED), times))
                .get(0);
    }

    @Test
    void aTempoThatNobodyTimedIsSaidToBeAnEstimate() throws Exception {
        assertTrue(sheet(ChangeTimes.usual()).text().contains("% (estimate)"));
        ChangeTimes timed = new ChangeTimes(ChangeTimes.usual().seconds(), Set.of());
        assertFalse(sheet(timed).text().contains("estimate"));
    }

    @Test
    void whatAPupilNeedsLongerForBeginsSlower() throws Exception {
        String slow = Arrays.stream(Change.values())
                .map(change -> "<change kind=\"%s\" seconds=\"2\"/>".formatted(change.id()))
                .collect(Collectors.joining("", "<changes>", "</changes>"));
        ChangeTimes times = ChangeTimes.read(new ByteArrayInputStream(slow.getBytes(StandardCharsets.UTF_8)));
        assertEquals(Set.of(), times.estimated());
        assertTrue(percent(times) < percent(ChangeTimes.usual()), percent(times) + " %");
    }

    private static int percent(ChangeTimes times) {
        return Exercises.of(GATE, times).stream()
                .filter(Exercise.Chunk.class::isInstance)
                .mapToInt(exercise -> ((Exercise.Chunk) exercise).percent())
                .max()
                .orElseThrow();
    }

    @Test
    void timesThatWereNotTakenStayEstimates() throws Exception {
        String one = "<changes><change kind=\"shift\" seconds=\"0.6\"/></changes>";
        ChangeTimes times = ChangeTimes.read(new ByteArrayInputStream(one.getBytes(StandardCharsets.UTF_8)));
        assertEquals(0.6, times.of(Change.SHIFT));
        assertEquals(ChangeTimes.usual().of(Change.REVERSAL), times.of(Change.REVERSAL));
        assertFalse(times.estimated().contains(Change.SHIFT));
        assertTrue(times.estimated().contains(Change.REVERSAL));
    }

    @Test
    void everyKindOfChangeHasATime() {
        for (Change change : Change.values()) {
            assertTrue(ChangeTimes.usual().of(change) > 0);
        }
    }
}
