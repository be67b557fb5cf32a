package org.bellowscribe.musicxml;

import java.nio.charset.StandardCharsets;
import org.bellowscribe.diagnostic.DiagnosedException;

/** Small scores for tests. */
final class TinyScore {

    static final String HEAD = """
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">
            <score-partwise version="4.0">
              <part-list>
                <score-part id="P1"><part-name>Melodeon</part-name></score-part>
              </part-list>
              <part id="P1">
                <measure number="1">
            """;

    static final String TAIL = """
                </measure>
              </part>
            </score-partwise>
            """;

    private TinyScore() {}

    /** Returns a score of one part and one measure with this content. */
    static String of(String measure) {
        return HEAD + measure.indent(6) + TAIL;
    }

    static ScoreDocument decode(String text) throws DiagnosedException {
        return ScoreDocument.decode(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Returns the measure's content of a score made by {@link #of}, without its indentation. */
    static String measure(ScoreDocument score) {
        return score.text()
                .substring(HEAD.length(), score.text().length() - TAIL.length())
                .replaceAll("(?m)^ {6}", "");
    }
}
