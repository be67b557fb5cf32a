package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.LetteredPart;
import org.bellowscribe.diagnostic.DiagnosedException;

/** Parts and finger numbers of a score that may be ours although nothing in the file says so. */
public final class LostElements {

    private LostElements() {}

    /** Returns the parts that are called as our left hand is and have a text below all that they strike. */
    public static List<LetteredPart> parts(ScoreDocument score) {
        LetteredParts parts = new LetteredParts();
        walk(score, parts);
        return parts.found();
    }

    /** Returns a score without a part. */
    public static ScoreDocument withoutPart(ScoreDocument score, String id) {
        Splices splices = new Splices();
        walk(score, element -> {
            if ((element.is("part") || element.is("score-part")) && id.equals(element.attribute("id"))) {
                splices.remove(element);
            }
        });
        return score.withText(splices.apply(score.text()));
    }

    /** Returns the finger numbers of all notes that have just one. */
    public static List<Annotation.Finger> fingers(ScoreDocument score) {
        LostFingers fingers = new LostFingers();
        walk(score, fingers);
        List<Annotation.Finger> found = new ArrayList<>();
        fingers.found().forEach((note, each) -> found.add(new Annotation.Finger(note, each.finger())));
        return found;
    }

    /**
     * Returns a score without the finger numbers of some notes.
     *
     * @param notes 0-based places of notes that have just one
     */
    public static ScoreDocument withoutFingers(ScoreDocument score, Set<Integer> notes) {
        LostFingers fingers = new LostFingers();
        walk(score, fingers);
        Splices splices = new Splices();
        fingers.found().forEach((note, each) -> {
            if (notes.contains(note)) {
                splices.remove(each.holder());
            }
        });
        return score.withText(splices.apply(score.text()));
    }

    private static void walk(ScoreDocument score, XmlVisitor visitor) {
        try {
            XmlWalk.over(score.text(), visitor);
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Elements that nested before no longer do.", e);
        }
    }
}
