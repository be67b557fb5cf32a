package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.annotation.edit.ReadMark;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Task;
import org.jspecify.annotations.Nullable;

/** What a teacher has fixed in one tune: the pins of a file and those among the marks of an earlier run. */
final class Fixes {

    /**
     * A tune in one key with all that is fixed there.
     *
     * @param task the tune with its pins
     * @param signed which marks bear the sign and keep it
     * @param remarks marks that cannot be kept but matter little
     */
    record Fixed(Task task, SignedMarks signed, List<Diagnostic> remarks) {
        Fixed {
            remarks = List.copyOf(remarks);
        }
    }

    private final @Nullable NamedPins pins;
    private final HandEdits edits;

    Fixes(@Nullable NamedPins pins, HandEdits edits) {
        this.pins = pins;
        this.edits = edits;
    }

    /**
     * Returns a tune with what is fixed in it.
     *
     * @param task the tune in the key in which it is played, with nothing fixed
     * @throws DiagnosedException if something that is to be kept cannot be
     */
    Fixed in(Task task) throws DiagnosedException {
        Task byFile = task.with(byFile(task));
        HandEdits.Kept kept = edits.of(byFile);
        List<Pin> all = new ArrayList<>(byFile.options().pins().list());
        all.addAll(kept.pins().list());
        return new Fixed(byFile.with(new Pins(all)), kept.signed(), kept.remarks());
    }

    /**
     * Returns what the file of pins fixes.
     *
     * @throws DiagnosedException if a pin cannot be
     */
    Pins byFile(Task task) throws DiagnosedException {
        return pins == null ? Pins.NONE : pins.of(task);
    }

    /** Returns all marks of the sheet as far as they can be read, whoever made them. */
    List<ReadMark> allMarks(Task task) {
        return edits.all(task);
    }
}
