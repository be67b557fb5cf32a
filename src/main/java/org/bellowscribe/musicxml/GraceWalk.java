package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Place;

/** Collects the notes of a text with what must be known of grace notes and their neighbors. */
final class GraceWalk implements XmlVisitor {

    /**
     * A note or rest.
     *
     * @param index 0-based place among all notes in measures
     * @param where its measure
     * @param stretch notes with the same number follow each other in one measure, without going back in time
     * @param voice its part and voice
     * @param grace true if it is a grace note
     * @param steals true if it is a grace note that the score takes for an end of the note before it
     * @param chord true if it is struck together with the note before it
     * @param rest true if it is a rest
     * @param worded true if words of ours stand before it, or before grace notes that lead to it
     */
    record Note(
            int index,
            Place where,
            int stretch,
            String voice,
            boolean grace,
            boolean steals,
            boolean chord,
            boolean rest,
            boolean worded) {}

    private final List<Note> notes = new ArrayList<>();
    private String part = "";
    private Place where = Place.FILE;
    private int measure;
    private int stretch;
    private String voice = "";
    private boolean grace;
    private boolean steals;
    private boolean chord;
    private boolean rest;
    private boolean worded;

    /** Returns the notes of a text in their order; none if it has no grace notes. */
    static List<Note> in(String text) throws DiagnosedException {
        GraceWalk walk = new GraceWalk();
        if (text.contains("<grace")) {
            XmlWalk.over(text, walk);
        }
        return walk.notes;
    }

    /** Returns the notes that were walked over, in their order. */
    List<Note> notes() {
        return notes;
    }

    @Override
    public void start(XmlElement element) {
        String id = PartKeys.partId(element);
        if (id != null) {
            part = id;
            measure = 0;
        } else if (element.is("measure")) {
            measure++;
            String number = element.attribute("number");
            where = Place.measure(measure, number == null ? "" : number, part);
        } else if (NoteAnchors.isNote(element)) {
            voice = "";
            grace = false;
            steals = false;
            chord = false;
            rest = false;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (NoteAnchors.isNote(element)) {
            notes.add(new Note(
                    notes.size(), where, stretch, part + "\n" + voice, grace, steals, chord, rest, worded && !grace));
            worded &= grace;
        } else if (element.isIn("note")) {
            child(element);
        } else if (element.is("direction") && MarkNames.isOurs(element)) {
            worded = true;
        } else if (element.is("measure") || element.is("backup")) {
            stretch++;
            worded = false;
        }
    }

    private void child(XmlElement child) {
        grace |= child.is("grace");
        steals |= child.is("grace") && child.attribute("steal-time-previous") != null;
        chord |= child.is("chord");
        rest |= child.is("rest");
        voice = child.is("voice") ? child.plainContent() : voice;
    }
}
