package org.bellowscribe.agreement;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.instrument.file.PublishedTable;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;

/**
 * A passage that somebody has published with its buttons, in the setting it stands in: its box and key, the melody alone
 * in quarters, once. What the source calls a choice across the rows is played across the rows. Sources stand in the table.
 *
 * @param id its line in the table
 * @param notes how many notes it has
 * @param met how many of them the program plays on the same button in the same direction
 */
record Passage(String id, int notes, int met) {

    private static final int KIND = 1;
    private static final int INSTRUMENT = 4;
    private static final int KEY = 6;
    private static final int NOTES = 7;
    private static final int BUTTONS = 8;
    private static final int DIRECTIONS = 9;

    private static final Map<String, String> BOXES = Map.of(
            "Anglo C/G 30 (20 = C and G rows)", "anglo-cg-30",
            "G/C 21 accidentals on buttons 1", "gc-21-accidentals",
            "D/G 21 accidentals on buttons 1", "dg-21-accidentals",
            "C/F 21 accidentals on buttons 1", "cf-21-accidentals",
            "A/D 21 accidentals on buttons 1", "ad-21-accidentals",
            "C#/D 21", "c-sharp-d-21",
            "G/C/F 31", "gcf-31-accidentals");

    private static final Map<String, Integer> FIFTHS = Map.of("C", 0, "G", 1, "D", 2, "A", 3, "F", -1);

    /** Plays all passages that say what to play: a tune or an exercise, not a check of the layout. */
    static List<Passage> all() {
        return PublishedTable.lines("worked-examples.csv").stream()
                .filter(line -> line.get(DIRECTIONS).matches("(push|pull)( (push|pull))*"))
                .filter(line -> !line.get(BUTTONS).isEmpty() && !line.get(KIND).equals("layout check"))
                .filter(line -> FIFTHS.containsKey(line.get(KEY)))
                .map(Passage::of)
                .toList();
    }

    private static Passage of(List<String> line) {
        String[] buttons = line.get(BUTTONS).split(" ");
        String[] directions = line.get(DIRECTIONS).split(" ");
        List<Step> steps = play(line);
        int met = 0;
        for (int i = 0; i < steps.size(); i++) {
            List<String> ids =
                    steps.get(i).buttons().stream().map(Button::id).sorted().toList();
            boolean same =
                    ids.equals(Arrays.stream(buttons[i].split("\\+")).sorted().toList());
            met += same && steps.get(i).direction().label().equals(directions[i]) ? 1 : 0;
        }
        return new Passage(line.get(0), steps.size(), met);
    }

    private static List<Step> play(List<String> line) {
        try {
            Key key = new Key(FIFTHS.getOrDefault(line.get(KEY), 0), Mode.MAJOR);
            Tune tune = TuneText.of(line.get(NOTES), 100, new TimeSignature(4, 4), key);
            String manner = line.get(KIND).equals("cross-row choice") ? "across-the-rows" : MannerLibrary.DEFAULT_ID;
            SolverOptions options =
                    new SolverOptions(MannerLibrary.of(manner), Times.ONCE, true, SolverOptions.USUAL_CELL_LIMIT);
            String box = BOXES.getOrDefault(line.get(INSTRUMENT), line.get(INSTRUMENT));
            Outcome outcome = Solver.solve(tune, InstrumentLibrary.find(box), List.of(), options);
            return outcome instanceof Outcome.Solved solved ? solved.solution().steps() : List.of();
        } catch (DiagnosedException e) {
            throw new IllegalStateException(line.get(0), e);
        }
    }
}
