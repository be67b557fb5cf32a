package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.PartLook;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * Adds parts of ours behind those of a score, each piece directly behind a {@code >} and with white space of its own, so
 * that {@link MarkRemover} gives the text back.
 */
final class PartWriter {

    /** A part as text: what is inside each of its measures. */
    private record Written(String id, String names, List<String> contents) {}

    private final PartFrames frames;
    private final ScoreKind kind;

    private PartWriter(PartFrames frames, ScoreKind kind) {
        this.frames = frames;
        this.kind = kind;
    }

    /**
     * Returns the text with parts; as it is if it has no list of parts, or not the part with the melody.
     *
     * @param melody id of the part with the melody
     */
    static String write(String text, ScoreKind kind, String melody, List<PartAddition> parts)
            throws DiagnosedException {
        PartFrames frames = PartFrames.of(text, melody);
        if (frames.frames().isEmpty() || frames.listEnd().offset() == 0) {
            return text;
        }
        PartWriter writer = new PartWriter(frames, kind);
        Splices splices = new Splices();
        for (PartAddition part : parts) {
            writer.add(writer.written(part), splices);
        }
        return splices.apply(text);
    }

    private Written written(PartAddition addition) throws DiagnosedException {
        if (addition instanceof PartAddition.Copy copy) {
            List<String> contents = PartCopy.measures(copy.from().text(), copy.part());
            return new Written(MarkNames.PREFIX + copy.id(), name(copy.name()), contents);
        }
        PartAddition.Own own = (PartAddition.Own) addition;
        PartMeasures measures = new PartMeasures(own.part(), frames.frames(), false);
        List<String> contents = new ArrayList<>();
        for (int i = 0; i < measures.count(); i++) {
            contents.add(measures.content(i));
        }
        // The prefix makes it ours.
        String id = MarkNames.PREFIX + own.part().look().id();
        return new Written(id, names(own.part().look()), contents);
    }

    private void add(Written part, Splices splices) {
        splices.insert(
                frames.listEnd().offset(),
                frames.listEnd().space() + "<score-part id=\"" + part.id() + "\">" + part.names() + "</score-part>");
        int count = Math.min(frames.frames().size(), part.contents().size());
        if (kind == ScoreKind.TIMEWISE) {
            for (int i = 0; i < count; i++) {
                Anchor end = frames.measureEnds().get(i);
                splices.insert(
                        end.offset(),
                        end.space() + "<part id=\"" + part.id() + "\">"
                                + part.contents().get(i) + "</part>");
            }
        } else {
            splices.insert(frames.partEnd().offset(), partwise(part, count));
        }
    }

    static String names(PartLook look) {
        return name(look.title()) + "<part-abbreviation>" + look.abbreviation() + "</part-abbreviation>";
    }

    private static String name(String title) {
        return "<part-name>" + XmlText.escape(title) + "</part-name>";
    }

    private String partwise(Written written, int count) {
        String space = frames.partEnd().space();
        StringBuilder part = new StringBuilder(space)
                .append("<part id=\"")
                .append(written.id())
                .append("\">");
        String inner = space.isEmpty() ? "" : space + "  ";
        for (int i = 0; i < count; i++) {
            part.append(inner)
                    .append(frames.frames().get(i).startTag())
                    .append(written.contents().get(i))
                    .append("</measure>");
        }
        return part.append(space).append("</part>").toString();
    }
}
