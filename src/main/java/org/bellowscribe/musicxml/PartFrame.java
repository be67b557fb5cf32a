package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;

/** What a measure of an added part has in common with the measure of the melody that it stands under, as text. */
final class PartFrame {

    private final String startTag;
    private String time = "";
    private final List<String> leftBarlines = new ArrayList<>();
    private final List<String> rightBarlines = new ArrayList<>();
    private final List<String> signsBefore = new ArrayList<>();
    private final List<String> signsAfter = new ArrayList<>();
    private boolean hasNotes;

    /** Creates the frame of a measure. */
    PartFrame(XmlElement measure) {
        startTag = "<measure" + attribute(measure, "number") + attribute(measure, "implicit") + ">";
    }

    /**
     * Creates the frame of a measure that is of no score.
     *
     * @param number its number
     */
    PartFrame(int number) {
        startTag = "<measure number=\"" + number + "\">";
    }

    private static String attribute(XmlElement element, String name) {
        String value = element.attribute(name);
        return value == null ? "" : " " + name + "=\"" + value.replace("\"", "&quot;") + "\"";
    }

    /** Returns the start tag with number and whatever else says how the measure counts. */
    String startTag() {
        return startTag;
    }

    /** Returns the time signature that begins in it; empty if none does. */
    String time() {
        return time;
    }

    /** Returns the bar lines before the first note. */
    String leftBarlines() {
        return String.join("", leftBarlines);
    }

    /** Returns the bar lines after the last note. */
    String rightBarlines() {
        return String.join("", rightBarlines);
    }

    /** Returns the signs of the order of play, and tempos, that stand before the first note. */
    String signsBefore() {
        return String.join("", signsBefore);
    }

    /** Returns those that stand after the first note. */
    String signsAfter() {
        return String.join("", signsAfter);
    }

    void note() {
        hasNotes = true;
    }

    void time(String element) {
        time = time.isEmpty() ? element : time;
    }

    void barline(String location, String element) {
        if (location.equals("left")) {
            leftBarlines.add(element);
        } else if (!location.equals("middle")) {
            rightBarlines.add(element);
        }
    }

    void sign(String element) {
        (hasNotes ? signsAfter : signsBefore).add(element);
    }
}
