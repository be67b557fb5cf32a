package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.annotation.edit.ReadMark;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Task;
import org.jspecify.annotations.Nullable;

/** Reads what somebody marked in a score, to learn from it. */
public final class TaughtReader {

    private static final String AIR = "air";

    private final MarkSettings settings;
    private final TuneReader reader;

    /**
     * Creates a reader.
     *
     * @param settings how the scores were marked; where edits are kept, every mark of a sheet counts, not only those with
     *     the sign
     */
    public TaughtReader(MarkSettings settings) {
        this.settings = settings;
        reader = new TuneReader(settings);
    }

    /**
     * A score with what somebody marked in it.
     *
     * @param task the tune with nothing fixed
     * @param marks what was marked; empty if nothing was
     * @param remarks what there is to say about the score
     */
    public record Taught(Task task, Pins marks, List<Diagnostic> remarks) {

        /** Copies the list. */
        public Taught {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * Reads a score in the key in which it is written.
     *
     * @param bytes the score's file
     * @param name what to call the tune if it has no title
     * @param pins the file of pins; null for none
     * @throws DiagnosedException if it cannot be read, cannot be played, or a mark of it cannot be
     */
    public Taught read(byte[] bytes, String name, @Nullable NamedPins pins) throws DiagnosedException {
        ReadTune read = reader.read(bytes, name, pins);
        Task task = settings.task(read.tune(), 0, read.leftHand().wanted(read.tune(), 0));
        List<Diagnostic> remarks = new ArrayList<>(read.remarks());
        if (Solver.solve(task) instanceof Outcome.Unplayable unplayable) {
            throw new DiagnosedException(unplayable.diagnostics());
        }
        if (!settings.steering().keepsEdits()) {
            Fixes.Fixed fixed = read.fixes().in(task);
            remarks.addAll(fixed.remarks());
            return new Taught(task, fixed.task().options().pins(), remarks);
        }
        return new Taught(task, wholeSheet(task, read.fixes()), remarks);
    }

    // Where a sheet shows presses of the air button or could, a note without one is a note without air.
    private Pins wholeSheet(Task task, Fixes fixes) throws DiagnosedException {
        List<Pin> all = new ArrayList<>(fixes.byFile(task).list());
        List<ReadMark> marks = fixes.allMarks(task);
        marks.stream().filter(ReadMark::isRead).forEach(mark -> all.addAll(mark.pins()));
        if (!marks.isEmpty() && settings.marks().contains(AIR)) {
            Set<Integer> pressed = new HashSet<>();
            all.stream().filter(pin -> pin.air() != null).forEach(pin -> pressed.add(pin.event()));
            for (int e = 0; e < task.tune().events().size(); e++) {
                if (!pressed.contains(e)) {
                    all.add(Pin.at(e).air(AirUse.NONE));
                }
            }
        }
        return new Pins(all);
    }
}
