package org.bellowscribe.solver.calibration;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;

/**
 * A small tune with the marks that a good teacher would write, and why.
 *
 * @param lines what its block in the file says, by the word before the colon
 */
record CalibrationCase(Map<String, String> lines) {

    private static final String FILE = "cases.txt";
    private static final Map<String, Integer> FIFTHS = Map.of("C", 0, "G", 1, "D", 2, "A", 3, "F", -1);
    private static final Set<String> WORDS = Set.of(
            "case", "why", "source", "box", "manner", "time", "tempo", "key", "hands", "times", "notes", "buttons",
            "hand", "left", "air");

    /** Returns the cases of the file, in its order. */
    static List<CalibrationCase> all() {
        List<CalibrationCase> cases = new ArrayList<>();
        for (String block : text().split("\n\\s*\n")) {
            Map<String, String> lines = new LinkedHashMap<>();
            block.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .forEach(line -> {
                        String[] parts = line.split(":\\s+", 2);
                        if (parts.length != 2 || !WORDS.contains(parts[0]) || lines.put(parts[0], parts[1]) != null) {
                            throw new IllegalStateException(
                                    "The line (%s) must begin with a new word.".formatted(line));
                        }
                    });
            if (!lines.isEmpty()) {
                cases.add(new CalibrationCase(lines));
            }
        }
        return cases;
    }

    private static String text() {
        try (InputStream stream = CalibrationCase.class.getResourceAsStream(FILE)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String get(String word, String usual) {
        return lines.getOrDefault(word, usual);
    }

    String name() {
        return get("case", "");
    }

    /** Returns what a line asks of each event, or an empty list if there is no such line. */
    List<String> asked(String word) {
        return Stream.of(get(word, "").split("[\\s|]+"))
                .filter(token -> !token.isEmpty())
                .toList();
    }

    Tune tune() {
        String[] time = get("time", "4/4").split("/", -1);
        TimeSignature signature = new TimeSignature(Integer.parseInt(time[0]), Integer.parseInt(time[1]));
        Key key = new Key(FIFTHS.getOrDefault(get("key", "D"), 0), Mode.MAJOR);
        return TuneText.of(get("notes", ""), Double.parseDouble(get("tempo", "100")), signature, key);
    }

    /** Returns what the solver makes of it in a manner. */
    Solution solve(String manner) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find(get("box", InstrumentLibrary.DEFAULT_ID));
        Tune tune = tune();
        List<WantedSound> wanted = get("hands", "both").equals("right") ? List.of() : UsualPlan.of(tune, box);
        Times times = get("times", "again").equals("once") ? Times.ONCE : Times.AGAIN;
        Outcome outcome = Solver.solve(
                tune,
                box,
                wanted,
                new SolverOptions(MannerLibrary.of(manner), times, true, SolverOptions.USUAL_CELL_LIMIT));
        if (outcome instanceof Outcome.Solved solved) {
            return solved.solution();
        }
        throw new IllegalStateException("The case (%s) must be playable: %s.".formatted(name(), outcome));
    }

    Solution solve() throws DiagnosedException {
        return solve(get("manner", MannerLibrary.DEFAULT_ID));
    }
}
