package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/**
 * Reads the measures of a part as text that can stand in the same score once more: without ids, and without what one part of
 * a score says for all: tempos, signs of the order of play, chord symbols, breaks of lines and pages.
 */
final class PartCopy implements XmlVisitor {

    private static final Pattern ID = Pattern.compile("\\s(?:xml:)?id\\s*=\\s*(\"[^\"]*\"|'[^']*')");
    private static final Pattern INSTRUMENT = Pattern.compile("<instrument\\s[^>]*(/>|>\\s*</instrument\\s*>)");

    private final String text;
    private final String part;
    private final List<String> measures = new ArrayList<>();
    private final StringBuilder measure = new StringBuilder();
    private boolean inPart;
    private @Nullable XmlElement open;
    private int done;

    private PartCopy(String text, String part) {
        this.text = text;
        this.part = part;
    }

    /**
     * Returns what is inside each measure of a part.
     *
     * @param part id of the part
     */
    static List<String> measures(String text, String part) throws DiagnosedException {
        PartCopy copy = new PartCopy(text, part);
        XmlWalk.over(text, copy);
        return copy.measures;
    }

    @Override
    public void start(XmlElement element) {
        String id = PartKeys.partId(element);
        if (id != null) {
            inPart = id.equals(part);
        }
        boolean holdsMusic = element.depth() == 3 && (element.name().equals("measure") || id != null);
        if (inPart && holdsMusic) {
            open = element;
            done = element.contentStart();
            measure.setLength(0);
        }
    }

    @Override
    public void end(XmlElement element) {
        if (open == null) {
            return;
        }
        if (element == open) {
            if (!element.isOneTag()) {
                measure.append(text, done, element.contentEnd());
            }
            String bare = INSTRUMENT.matcher(measure).replaceAll("");
            measures.add(ID.matcher(bare).replaceAll(""));
            open = null;
        } else if (element.parent() == open && isForAll(element)) {
            measure.append(text, done, element.spaceStart());
            done = element.end();
        }
    }

    private boolean isForAll(XmlElement element) {
        return switch (element.name()) {
            case "print", "harmony" -> true;
            case "direction", "sound" -> PartFrames.isSign(text.substring(element.start(), element.end()));
            default -> false;
        };
    }
}
