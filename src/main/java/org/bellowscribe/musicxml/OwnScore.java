package org.bellowscribe.musicxml;

import java.nio.charset.StandardCharsets;
import org.bellowscribe.annotation.OwnPart;
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

    private OwnScore() {}

    /**
     * Returns the score.
     *
     * @param sheet the score that the part belongs to, whose bar lines, repeats, jumps and tempos are copied
     * @param part the part
     * @param title title of the score
     */
    public static ScoreDocument write(ScoreDocument sheet, OwnPart part, String title) throws DiagnosedException {
        PartFrames frames = PartFrames.of(sheet.withoutMarks().text(), part.melody());
        PartMeasures measures = new PartMeasures(part, frames.frames(), true);
        StringBuilder text = new StringBuilder(HEAD.formatted(XmlText.escape(title), PartWriter.names(part.look())));
        for (int i = 0; i < measures.count(); i++) {
            text.append("    ").append(measures.measure(i)).append('\n');
        }
        text.append("  </part>\n</score-partwise>\n");
        return ScoreDocument.decode(text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
