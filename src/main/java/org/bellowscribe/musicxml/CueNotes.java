package org.bellowscribe.musicxml;

import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/**
 * Makes the notes of a part cue notes: small, and silent in programs that play. A cue note is marked by an element at its
 * beginning; some programs heed only the size of its value. It cannot have ties that sound.
 */
final class CueNotes implements XmlVisitor {

    private static final String CUE = "<cue/>";
    private static final String SIZE = " size=\"cue\"";

    private final String part;
    private final Splices splices = new Splices();
    private boolean inPart;
    private @Nullable XmlElement note;
    private int place;
    private boolean isCue;

    private CueNotes(String part) {
        this.part = part;
    }

    /**
     * Returns a text with cue notes.
     *
     * @param part id of the part
     */
    static String of(String text, String part) throws DiagnosedException {
        CueNotes cue = new CueNotes(part);
        XmlWalk.over(text, cue);
        return cue.splices.apply(text);
    }

    @Override
    public void start(XmlElement element) {
        String id = PartKeys.partId(element);
        if (id != null) {
            inPart = id.equals(part);
        }
        if (inPart && NoteAnchors.isNote(element)) {
            note = element;
            place = element.contentStart();
            isCue = false;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (note == null) {
            return;
        }
        if (element == note) {
            if (!isCue && !element.isOneTag()) {
                splices.insert(place, CUE);
            }
            note = null;
        } else if (element.parent() == note) {
            child(element);
        }
    }

    private void child(XmlElement child) {
        switch (child.name()) {
            case "grace" -> place = child.end();
            case "cue" -> isCue = true;
            case "tie" -> splices.remove(child);
            case "type" -> {
                if (!child.hasAttributes()) {
                    splices.insert(child.start() + "<type".length(), SIZE);
                }
            }
            default -> {}
        }
    }
}
