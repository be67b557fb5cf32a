package org.bellowscribe.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;

/**
 * One trial for each instrument and key and no more, and at most so many solved: linear in each by construction.
 *
 * <p>The 288 shared tunes on the 65 instruments of the library in 25 keys are 468,000 trials: 23 s of one core, 14 s of them
 * for reading the scores, so about 20 µs a trial ({@code fit ../shared/corpus/tunes --solve 0 --threads 1}; half the
 * instruments 19 s, twice the keys 26 s, half the tunes 17 s). Each trial that is solved adds about 0.15 s.
 */
class FitWorkTest {

    private static final Tune SCALE = TuneText.of("D4 E4 F#4 G4 | A4 B4 C#5 D5 | A4 F#4 D4*2");

    private static List<Trial> rank(List<Instrument> instruments, int within, int solved) {
        return Fitting.rank(
                SCALE,
                instruments,
                new FitOptions(
                        IntStream.rangeClosed(-within, within).boxed().toList(),
                        solved,
                        new SolverOptions(
                                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, FitOptions.CELL_LIMIT)));
    }

    private static List<Instrument> library() {
        return InstrumentLibrary.all().stream().map(entry -> entry.instrument()).toList();
    }

    @Test
    void wholeLibraryInAllKeysIsOneTrialEach() {
        List<Trial> trials = rank(library(), 12, 0);
        assertEquals(library().size() * 25, trials.size());
        assertEquals(
                trials.size(),
                trials.stream()
                        .map(trial -> trial.instrument().id() + trial.semitones())
                        .distinct()
                        .count());
    }

    @Test
    void nothingIsSolvedUnlessAskedFor() {
        assertTrue(rank(library(), 12, 0).stream().allMatch(trial -> trial.cost() == null));
    }

    @Test
    void everyInstrumentIsSolvedOnceBeforeAnyTwice() throws DiagnosedException {
        List<Instrument> two = List.of(InstrumentLibrary.find("dg-21"), InstrumentLibrary.find("cf-21"));
        List<Trial> trials = rank(two, 12, 2);
        Map<String, Long> solved = trials.stream()
                .filter(trial -> trial.cost() != null)
                .collect(java.util.stream.Collectors.groupingBy(
                        trial -> trial.instrument().id(), java.util.stream.Collectors.counting()));
        assertEquals(Map.of("dg-21", 1L, "cf-21", 1L), solved);
    }

    @Test
    void soundingKeyIsThatOfTheTransposedTune() {
        Trial trial = rank(library(), 0, 0).get(0);
        assertEquals("D", trial.soundingKey(SCALE).name());
        Trial moved = new Trial(trial.instrument(), 3, 0, null, null);
        assertEquals("F", moved.soundingKey(SCALE).name());
    }

    @Test
    void bookCountsEachTuneOnceForAnInstrument() throws DiagnosedException {
        List<Instrument> two = List.of(InstrumentLibrary.find("cf-21"), InstrumentLibrary.find("dg-21"));
        BookFit book = new BookFit(two);
        book.add(new TuneFit("scale", SCALE, rank(two, 2, 1)));
        BookFit.Line first = book.lines().get(0);
        assertEquals("dg-21", first.instrument().id());
        assertEquals(List.of(1, 1), List.of(first.plays(), first.asWritten()));
        assertEquals(1, book.lines().stream().mapToInt(BookFit.Line::bestFor).sum());
        assertEquals(Map.of("D", 1), first.keys());
    }
}
