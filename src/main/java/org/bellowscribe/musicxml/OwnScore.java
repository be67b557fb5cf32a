package org.bellowscribe.musicxml;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.OwnPart;
import org.bellowscribe.annotation.PartLook;
import org.bellowscribe.annotation.PartMeasure;
import org.bellowscribe.diagnostic.DiagnosedException;

/** Writes a score that holds nothing but a part of ours. */
public final class OwnScore {

    private static final String HEAD = """
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" \
            "http://www.musicxml.org/dtds/partwise.dtd">
            <score-partwise version="4.0">
              <work><work-title>%s</work-title></work>
              <part-list>
                <score-part id="P1">%s</score-part>
              </part-list>
              <part id="P1">
            """;

    /** So many measures have room on a line with counts and words. */
    private static final int ON_A_LINE = 4;

    private OwnScore() {}

    /**
     * Returns a score of pieces that are each repeated, on lines of their own.
     *
     * @param part the part; its measures are whatever the pieces are made of
     * @param starts 0-based indices of the measures with which pieces begin, the first of them 0
     * @param title title of the score
     */
    public static ScoreDocument write(OwnPart part, List<Integer> starts, String title) throws DiagnosedException {
        List<PartFrame> frames = new ArrayList<>();
        int count = part.measures().size();
        for (int i = 0; i < count; i++) {
            PartFrame frame = new PartFrame(i + 1);
            if (starts.contains(i)) {
                if (i > 0) {
                    frame.sign("<print new-system=\"yes\"/>");
                }
                frame.barline("left", repeat("left", "heavy-light", "forward"));
            }
            if (i + 1 == count || starts.contains(i + 1)) {
                frame.barline("right", repeat("right", "light-heavy", "backward"));
            }
            frames.add(frame);
        }
        return write(new PartMeasures(part, frames, true), part.look(), title);
    }

    private static String repeat(String location, String style, String direction) {
        return "<barline location=\"%s\"><bar-style>%s</bar-style><repeat direction=\"%s\"/></barline>"
                .formatted(location, style, direction);
    }

    /**
     * Returns the score.
     *
     * @param sheet the score that the part belongs to, whose bar lines, repeats, jumps and tempos are copied
     * @param part the part
     * @param title title of the score
     */
    public static ScoreDocument write(ScoreDocument sheet, OwnPart part, String title) throws DiagnosedException {
        List<PartFrame> frames =
                PartFrames.of(sheet.withoutMarks().text(), part.melody()).frames();
        if (part.look() == PartLook.BELLOWS) {
            breakLines(part, frames);
        }
        return write(new PartMeasures(part, frames, true), part.look(), title);
    }

    // Strokes are narrow, and the words above them are not: programs would crowd a dozen measures on a line.
    private static void breakLines(OwnPart part, List<PartFrame> frames) {
        List<PartMeasure> measures = part.measures();
        boolean pickUp = measures.size() > 1
                && measures.get(0)
                                .measure()
                                .length()
                                .compareTo(measures.get(1).measure().length())
                        < 0;
        for (int i = ON_A_LINE + (pickUp ? 1 : 0); i < frames.size(); i += ON_A_LINE) {
            frames.get(i).sign("<print new-system=\"yes\"/>");
        }
    }

    private static ScoreDocument write(PartMeasures measures, PartLook look, String title) throws DiagnosedException {
        StringBuilder text = new StringBuilder(HEAD.formatted(XmlText.escape(title), PartWriter.names(look)));
        for (int i = 0; i < measures.count(); i++) {
            text.append("    ").append(measures.measure(i)).append('\n');
        }
        text.append("  </part>\n</score-partwise>\n");
        return ScoreDocument.decode(text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
