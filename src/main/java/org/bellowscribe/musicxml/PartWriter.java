package org.bellowscribe.musicxml;

import org.bellowscribe.annotation.LeftHandPart;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * Adds a part of ours behind those of a score, each piece directly behind a {@code >} and with white space of its own, so
 * that {@link MarkRemover} gives the text back.
 */
final class PartWriter {

    /** Id of the part; the prefix makes it ours. */
    private static final String ID = MarkNames.PREFIX + "left-hand";

    /** Name of the part. */
    static final String NAME = "Left hand";

    /** What it is called from the second line on. */
    static final String ABBREVIATION = "L.H.";

    private PartWriter() {}

    /** Returns the text with the part; as it is if it has no list of parts, or not the part with the melody. */
    static String write(String text, ScoreKind kind, LeftHandPart part) throws DiagnosedException {
        PartFrames frames = PartFrames.of(text, part.melody());
        if (frames.frames().isEmpty() || frames.listEnd().offset() == 0) {
            return text;
        }
        PartMeasures measures = new PartMeasures(part, frames.frames(), false);
        Splices splices = new Splices();
        splices.insert(
                frames.listEnd().offset(),
                frames.listEnd().space() + "<score-part id=\"" + ID + "\">" + names() + "</score-part>");
        if (kind == ScoreKind.TIMEWISE) {
            for (int i = 0; i < measures.count(); i++) {
                Anchor end = frames.measureEnds().get(i);
                splices.insert(
                        end.offset(), end.space() + "<part id=\"" + ID + "\">" + measures.content(i) + "</part>");
            }
        } else {
            splices.insert(
                    frames.partEnd().offset(),
                    partwise(measures, frames.partEnd().space()));
        }
        return splices.apply(text);
    }

    static String names() {
        return "<part-name>" + NAME + "</part-name><part-abbreviation>" + ABBREVIATION + "</part-abbreviation>";
    }

    private static String partwise(PartMeasures measures, String space) {
        StringBuilder part =
                new StringBuilder(space).append("<part id=\"").append(ID).append("\">");
        String inner = space.isEmpty() ? "" : space + "  ";
        for (int i = 0; i < measures.count(); i++) {
            part.append(inner).append(measures.measure(i));
        }
        return part.append(space).append("</part>").toString();
    }
}
