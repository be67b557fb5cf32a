package org.bellowscribe.musicxml;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Counts the notes in measures and finds where the marks of some of them go. */
final class NoteAnchors implements XmlVisitor {

    // Root, part, measure, note; or root, measure, part, note.
    private static final int NOTE_DEPTH = 4;

    // Order in the schema: ..., beam, notations, lyric, play, listen.
    private static final Set<String> BEHIND_NOTATIONS = Set.of("lyric", "play", "listen");
    private static final Set<String> BEHIND_LYRICS = Set.of("play", "listen");

    private final Set<Integer> wanted;
    private final Map<Integer, NoteAnchor> found = new HashMap<>();
    private int count;
    // Whether the note that is next or open is wanted.
    private boolean isWanted;
    private Anchor notations = new Anchor(0, "");
    private @Nullable Anchor inNotations;
    // Behind what the notations that are open hold so far.
    private Anchor held = notations;
    private Anchor lyric = notations;
    private boolean pastNotations;
    private boolean pastLyrics;
    private String voice = "";
    private String staff = "";

    /** Creates a visitor that only counts. */
    NoteAnchors() {
        this(Set.of());
    }

    /**
     * Creates a visitor.
     *
     * @param wanted 0-based places of the notes among all notes in measures
     */
    NoteAnchors(Set<Integer> wanted) {
        this.wanted = wanted;
        isWanted = wanted.contains(0);
    }

    /** Returns the number of notes seen. */
    int count() {
        return count;
    }

    /** Returns the places for the marks of a wanted note that was seen. */
    NoteAnchor of(int note) {
        NoteAnchor anchor = found.get(note);
        if (anchor == null) {
            throw new IllegalArgumentException(
                    "The noteIndex (" + note + ") must be less than the number of notes (" + count + ").");
        }
        return anchor;
    }

    /** Tells whether an element is a note in a measure of a part. */
    static boolean isNote(XmlElement element) {
        XmlElement parent = element.parent();
        return element.depth() == NOTE_DEPTH
                && element.is("note")
                && parent != null
                && ((parent.is("measure") && parent.isIn("part")) || (parent.is("part") && parent.isIn("measure")));
    }

    @Override
    public void start(XmlElement element) {
        if (isWanted && isNote(element)) {
            notations = new Anchor(element.contentStart(), "");
            lyric = notations;
            inNotations = null;
            pastNotations = false;
            pastLyrics = false;
            voice = "";
            staff = "";
        } else if (isWanted && isChild(element) && element.is("notations")) {
            held = new Anchor(element.contentStart(), "");
        }
    }

    private static boolean isChild(XmlElement element) {
        return element.depth() == NOTE_DEPTH + 1 && element.isIn("note");
    }

    @Override
    public void end(XmlElement element) {
        if (isNote(element)) {
            if (isWanted) {
                Anchor words = new Anchor(element.before(), element.indentation());
                Anchor behind = new Anchor(element.end(), element.indentation());
                found.put(
                        count,
                        new NoteAnchor(words, inNotations, notations, lyric, behind, element.isOneTag(), voice, staff));
            }
            count++;
            isWanted = wanted.contains(count);
        } else if (isWanted && isChild(element)) {
            child(element);
        } else if (isWanted && element.depth() == NOTE_DEPTH + 2 && element.isIn("notations")) {
            held = new Anchor(element.end(), element.indentation());
        }
    }

    private void child(XmlElement child) {
        pastNotations = pastNotations || BEHIND_NOTATIONS.contains(child.name());
        pastLyrics = pastLyrics || BEHIND_LYRICS.contains(child.name());
        if (!pastNotations) {
            notations = new Anchor(child.end(), child.indentation());
        }
        if (!pastLyrics) {
            lyric = new Anchor(child.end(), child.indentation());
        }
        if (child.is("notations") && inNotations == null && !child.isOneTag() && !pastLyrics) {
            inNotations = held;
        }
        if (child.is("voice")) {
            voice = child.plainContent();
        } else if (child.is("staff")) {
            staff = child.plainContent();
        }
    }
}
