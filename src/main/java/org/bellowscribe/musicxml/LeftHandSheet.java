package org.bellowscribe.musicxml;

import java.nio.charset.StandardCharsets;
import org.bellowscribe.annotation.LeftHandPart;
import org.bellowscribe.diagnostic.DiagnosedException;

/** Writes a score that holds nothing but the left hand. */
public final class LeftHandSheet {

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

    private LeftHandSheet() {}

    /**
     * Returns the bytes of the score.
     *
     * @param sheet the score that the left hand belongs to, whose bar lines, repeats, jumps and tempos are copied
     * @param part the left hand
     * @param title title of the tune
     */
    public static byte[] write(ScoreDocument sheet, LeftHandPart part, String title) throws DiagnosedException {
        PartFrames frames = PartFrames.of(sheet.withoutMarks().text(), part.melody());
        PartMeasures measures = new PartMeasures(part, frames.frames(), true);
        StringBuilder text =
                new StringBuilder(HEAD.formatted(XmlText.escape(title + " (left hand)"), PartWriter.names()));
        for (int i = 0; i < measures.count(); i++) {
            text.append("    ").append(measures.measure(i)).append('\n');
        }
        text.append("  </part>\n</score-partwise>\n");
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
