package org.bellowscribe.agreement;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.Shared;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Solution;

/**
 * A shared tune that two players have marked for the default instrument, each without seeing the other's marks or the
 * program's.
 *
 * @param name name of the score without its ending
 * @param tune the tune as written
 * @param first the first player's marks
 * @param second the second player's marks
 */
record MarkedTune(String name, Tune tune, Marking first, Marking second) {

    private static final Path OURS = Path.of("src/test/resources/org/bellowscribe/agreement");

    /** Reads those that the points were weighed on, by name, or skips the calling test if they are absent. */
    static List<MarkedTune> all() {
        return read(Shared.path("facts/teachers"));
    }

    /**
     * Reads those that two other players marked later, by name, or skips the calling test if the tunes are absent.
     *
     * @param folder the folder with their marks, {@code twelve} or {@code ten}
     */
    static List<MarkedTune> later(String folder) {
        return read(OURS.resolve(folder));
    }

    private static List<MarkedTune> read(Path markings) {
        try (Stream<Path> files = Files.list(markings.resolve("first"))) {
            return files.map(file -> file.getFileName().toString())
                    .sorted()
                    .map(file -> read(markings, file))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static MarkedTune read(Path markings, String file) {
        String name = file.substring(0, file.length() - ".csv".length());
        return new MarkedTune(
                name,
                ReadTune.score(name),
                Marking.read(markings.resolve("first").resolve(file)),
                Marking.read(markings.resolve("second").resolve(file)));
    }

    /** Returns how the program plays it on the default instrument. */
    Solution played(Manner manner) {
        return ReadTune.play(tune, manner);
    }

    /** Returns when each event begins, in beats from the start of the sheet. */
    List<Double> beats() {
        double[] start = new double[tune.measures().size()];
        double at = 0;
        for (Measure measure : tune.measures()) {
            start[measure.index()] = at;
            at += measure.length().toDouble() / measure.time().pulse().toDouble();
        }
        List<Double> beats = new ArrayList<>();
        tune.events()
                .forEach(event -> beats.add(start[event.measure()]
                        + event.onset().toDouble()
                                / tune.measureOf(event).time().pulse().toDouble()));
        return beats;
    }
}
