package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/** Finds the key signatures of every part, and where one must be put if the part begins without. */
final class PartKeys implements XmlVisitor {

    /** What is known of one part. */
    static final class Part {
        private final List<Integer> signatures = new ArrayList<>();
        private boolean hasNote;
        private boolean isPastFirstMeasure;
        private boolean startsWithKey;
        private boolean hasDrumClef;
        private boolean hasOtherClef;
        private int place = -1;
        private boolean isInAttributes;
        private String indentation = "";

        /** Returns the sharps of every signature in score order, flats if negative. */
        List<Integer> signatures() {
            return signatures;
        }

        /** Returns true if all clefs are those of drums, whose notes have no pitch whatever is written. */
        boolean isDrums() {
            return hasDrumClef && !hasOtherClef;
        }

        /** Returns the place of the missing first signature; -1 if none is missing. */
        int missingPlace() {
            return startsWithKey ? -1 : place;
        }

        /** Returns the element that is missing, with the white space before it. */
        String missing(int fifths) {
            String key = indentation + "<key><fifths>" + fifths + "</fifths></key>";
            return isInAttributes ? key : "<attributes>" + key + "</attributes>";
        }

        private void place(int offset, boolean inAttributes, String space) {
            place = offset;
            isInAttributes = inAttributes;
            indentation = space;
        }

        private boolean isAtStart() {
            return !hasNote && !isPastFirstMeasure && !startsWithKey;
        }
    }

    private final Map<String, Part> parts = new LinkedHashMap<>();
    private Part part = new Part();

    private PartKeys() {}

    /** Returns the parts of a text by their ids. */
    static Map<String, Part> of(String text) throws DiagnosedException {
        PartKeys keys = new PartKeys();
        XmlWalk.over(text, keys);
        return keys.parts;
    }

    /** Returns the id of a part that starts, in a partwise or a timewise score; null for any other element. */
    static @Nullable String partId(XmlElement element) {
        boolean isPart = element.name().equals("part") && (element.depth() == 2 || element.isIn("measure"));
        String id = isPart ? element.attribute("id") : null;
        return isPart ? String.valueOf(id) : null;
    }

    /** Returns true for what holds the music of one measure of one part. */
    private static boolean isMeasure(XmlElement element) {
        return element.depth() == 3
                && ((element.name().equals("measure") && element.isIn("part"))
                        || (element.name().equals("part") && element.isIn("measure")));
    }

    @Override
    public void start(XmlElement element) {
        String id = partId(element);
        if (id != null) {
            part = parts.computeIfAbsent(id, any -> new Part());
        }
        if (isMeasure(element) && part.place < 0) {
            part.place(element.contentStart(), false, "");
        } else if (element.name().equals("attributes") && part.isAtStart()) {
            part.place(element.contentStart(), true, "");
        }
        part.hasNote |= element.name().equals("note");
    }

    @Override
    public void end(XmlElement element) {
        switch (element.name()) {
            case "attributes" -> part.isInAttributes &= !element.isOneTag();
            case "footnote", "level", "divisions" -> {
                if (element.isIn("attributes") && part.isAtStart()) {
                    part.place(element.end(), true, element.indentation());
                }
            }
            case "key" -> part.startsWithKey |= element.isIn("attributes") && !part.isPastFirstMeasure;
            case "fifths" -> signature(element);
            case "sign" -> clef(element);
            default -> part.isPastFirstMeasure |= isMeasure(element);
        }
    }

    private void signature(XmlElement fifths) {
        if (fifths.isIn("key") && fifths.plainContent().matches("[+-]?[0-9]{1,2}")) {
            part.signatures.add(Integer.valueOf(fifths.plainContent()));
        }
    }

    private void clef(XmlElement sign) {
        if (sign.isIn("clef")) {
            boolean drums = sign.plainContent().equals("percussion");
            part.hasDrumClef |= drums;
            part.hasOtherClef |= !drums;
        }
    }
}
