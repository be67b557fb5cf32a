package org.bellowscribe.musicxml;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Where grace notes begin that lead to a note. Words of the note stand before them: the converter of LilyPond 2.24 puts those
 * that stand between one note too late, and programs that save a score move them before both (measured, as in
 * {@code cli/MarksShownTest}).
 */
final class GraceStarts implements XmlVisitor {

    // Grace notes before these lead to no note that follows.
    private static final Set<String> ENDS = Set.of("measure", "part", "backup", "forward");

    private final Map<Integer, Anchor> starts = new HashMap<>();
    private @Nullable Anchor start;
    private boolean isGrace;
    private int count;

    /** Returns the place before the grace notes that lead to a note, or the other place if there are none. */
    Anchor before(int note, Anchor otherwise) {
        return starts.getOrDefault(note, otherwise);
    }

    @Override
    public void start(XmlElement element) {
        if (NoteAnchors.isNote(element)) {
            isGrace = false;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (NoteAnchors.isNote(element)) {
            note(element);
            count++;
        } else if (element.is("grace")) {
            isGrace = true;
        } else if (ENDS.contains(element.name())) {
            start = null;
        }
    }

    private void note(XmlElement note) {
        if (!isGrace && start != null) {
            starts.put(count, start);
            start = null;
        } else if (isGrace && start == null) {
            start = new Anchor(note.before(), note.indentation());
        }
    }
}
