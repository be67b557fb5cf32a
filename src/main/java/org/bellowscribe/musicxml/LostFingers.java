package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Finds the notes with one finger number that is not known to be ours, and what holds nothing but that number. */
final class LostFingers implements XmlVisitor {

    /**
     * A finger number.
     *
     * @param finger 1 to 5
     * @param holder the number itself, or the outermost element that holds nothing else
     */
    record Found(int finger, XmlElement holder) {}

    private final SortedMap<Integer, Found> found = new TreeMap<>();
    private final List<Found> here = new ArrayList<>();
    private int notes;
    private int inTechnical;
    private int inNotations;

    /** Returns them by the 0-based place of the note. */
    SortedMap<Integer, Found> found() {
        return found;
    }

    @Override
    public void start(XmlElement element) {
        if (NoteAnchors.isNote(element)) {
            here.clear();
        } else if (element.is("notations")) {
            inNotations = 0;
        } else if (element.is("technical")) {
            inTechnical = 0;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (element.isIn("technical")) {
            inTechnical++;
            if (element.is("fingering") && element.plainContent().matches("[1-5]")) {
                here.add(new Found(Integer.parseInt(element.plainContent()), element));
            }
        } else if (element.isIn("notations")) {
            inNotations++;
            widen(element, inTechnical);
        } else if (element.is("notations")) {
            widen(element, inNotations);
        } else if (NoteAnchors.isNote(element)) {
            if (here.size() == 1) {
                found.put(notes, here.get(0));
            }
            notes++;
        }
    }

    private void widen(XmlElement around, int children) {
        int last = here.size() - 1;
        if (children == 1 && last >= 0 && around.equals(here.get(last).holder().parent())) {
            here.set(last, new Found(here.get(last).finger(), around));
        }
    }
}
