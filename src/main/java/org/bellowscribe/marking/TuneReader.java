package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.CheckedTune;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.jspecify.annotations.Nullable;

/** The first step of marking: reads a score, without our earlier marks, and what a teacher has fixed in it. */
public final class TuneReader {

    private final MarkSettings settings;

    /** Creates a reader. */
    public TuneReader(MarkSettings settings) {
        this.settings = settings;
    }

    /**
     * Reads a score.
     *
     * @param bytes the score's file
     * @param name what to call the tune if it has no title
     * @param pins the file of pins; null for none
     * @throws DiagnosedException if it cannot be read
     */
    public ReadTune read(byte[] bytes, String name, @Nullable NamedPins pins) throws DiagnosedException {
        List<Diagnostic> remarks = new ArrayList<>();
        ScoreDocument document = new LostAndKnown(settings, name).find(ScoreDocument.decode(bytes), remarks);
        String bare = document.withoutMarks().text();
        CheckedTune checked = ScoreReader.readChecked(bare, name, settings.reading());
        LeftHandPlan plan = LeftHandPlan.of(settings, bare, checked.tune());
        remarks.addAll(checked.tune().diagnostics());
        remarks.addAll(plan.remarks());
        remarks.addAll(checked.schemaRemarks());
        HandEdits edits = new HandEdits(settings.steering().keepsPins() ? document.marks() : List.of(), settings);
        return new ReadTune(document, checked.tune(), plan, new Fixes(pins, edits), remarks);
    }
}
