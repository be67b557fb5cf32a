package org.bellowscribe.marking;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LetteredPart;
import org.bellowscribe.annotation.edit.LostMarks;
import org.bellowscribe.annotation.edit.LostPart;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.LostElements;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.Task;

/** Gives marks whose names a notation program has dropped their names back, so that they are not written twice. */
final class LostAndKnown {

    private static final String FINGERS = "fingers";

    /** Of so many fingers three must be those that we would write. */
    private static final int OUT_OF = 4;

    private final MarkSettings settings;
    private final String name;

    /**
     * Creates a search.
     *
     * @param name what to call the tune if it has no title
     */
    LostAndKnown(MarkSettings settings, String name) {
        this.settings = settings;
        this.name = name;
    }

    /** Returns the score with names, and without a left hand and fingers of ours; as it is if it has lost none. */
    ScoreDocument find(ScoreDocument score, List<Diagnostic> remarks) throws DiagnosedException {
        if (!score.marks().isEmpty() || !LostMarks.mayBeAmong(score.otherTexts())) {
            return score;
        }
        ScoreDocument known = score;
        int parts = 0;
        for (LetteredPart part : LostElements.parts(score)) {
            if (LostPart.isOurs(part, settings.style().leftHand())) {
                known = LostElements.withoutPart(known, part.id());
                parts++;
            }
        }
        Task task = task(known);
        Map<Annotation, String> lost = LostMarks.among(task, settings.style(), known.otherTexts());
        if (lost.isEmpty()) {
            return score;
        }
        known = known.adopting(lost);
        Set<Integer> fingers = fingers(known, task);
        remarks.add(remark(lost.size(), fingers.size(), parts));
        return fingers.isEmpty() ? known : LostElements.withoutFingers(known, fingers);
    }

    private Task task(ScoreDocument score) throws DiagnosedException {
        String bare = score.withoutMarks().text();
        Tune tune = ScoreReader.readChecked(bare, name, settings.reading()).tune();
        return settings.task(tune, 0, LeftHandPlan.of(settings, bare, tune).wanted(tune, 0));
    }

    // Ours are those of notes whose fingers, most of them, are what we would write.
    private Set<Integer> fingers(ScoreDocument score, Task task) throws DiagnosedException {
        Solution solution = settings.marks().contains(FINGERS) ? Solver.attempt(task) : null;
        if (solution == null) {
            return Set.of();
        }
        Arrangement arrangement = new Arrangement(task.tune(), task.instrument(), solution, settings.style());
        Map<Integer, Integer> ours = new HashMap<>();
        Annotators.annotate(arrangement, List.of(FINGERS)).stream()
                .map(mark -> (Annotation.Finger) mark)
                .forEach(mark -> ours.put(mark.noteIndex(), mark.finger()));
        Set<Integer> written = new TreeSet<>();
        int same = 0;
        for (Annotation.Finger finger : LostElements.fingers(score)) {
            Integer own = ours.get(finger.noteIndex());
            if (own != null) {
                written.add(finger.noteIndex());
                same += own == finger.finger() ? 1 : 0;
            }
        }
        return OUT_OF * same >= (OUT_OF - 1) * ours.size() ? written : Set.of();
    }

    private Diagnostic remark(int texts, int fingers, int parts) {
        return Diagnostic.note(
                DiagnosticCode.ASSUMED,
                Place.FILE,
                "Lyrics and words without our names (%d)%s%s read as marks for %s: they are taken for ours and written anew."
                        .formatted(
                                texts,
                                fingers == 0 ? "" : ", finger numbers (%d)".formatted(fingers),
                                parts == 0 ? "" : ", the part of the left hand",
                                settings.instrument().name()));
    }
}
