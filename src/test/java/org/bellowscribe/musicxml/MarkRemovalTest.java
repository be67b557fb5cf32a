package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class MarkRemovalTest {

    private static String stripped(String measure) throws DiagnosedException {
        return TinyScore.measure(TinyScore.decode(TinyScore.of(measure)).withoutMarks());
    }

    @Test
    void ourPrefixElsewhereIsNoMark() throws DiagnosedException {
        String measure = """
                <!-- <lyric name="bellowscribe-a"/> -->
                <note id="bellowscribe-w1">
                  <rest/>
                  <lyric name="verse" number="bellowscribe-a"><text>bellowscribe-a</text></lyric>
                  <lyric name="my-bellowscribe-a"><text>la</text></lyric>
                  <notations><![CDATA[<lyric name="bellowscribe-a"/>]]></notations>
                  <?p <lyric name="bellowscribe-a"/> ?>
                </note>
                <direction name="bellowscribe-a" xml:id="bellowscribe-w1"/>
                """;
        ScoreDocument score = TinyScore.decode(TinyScore.of(measure));
        assertSame(score, score.withoutMarks());
    }

    @Test
    void marksAreFoundHoweverAnotherProgramWritesThem() throws DiagnosedException {
        assertEquals("<note><rest/>\n</note>\n", stripped("""
                        <note><rest/><lyric
                            default-y = "-80"
                            name = 'bellowscribe-a' >
                          <text>5</text>
                        </lyric >   <lyric name="bellowscribe-b"/>
                        </note>

                          <direction id="bellowscribe-w1"><direction-type><words/></direction-type></direction>
                        """));
    }

    @Test
    void aWholePartOfOursIsRemovedWithAllInside() throws DiagnosedException {
        String own = TinyScore.of("<note/>");
        String added = own.replace(
                        "</part-list>", "<score-part id=\"bellowscribe-bass\"><part-name/></score-part></part-list>")
                .replace(
                        "</score-partwise>",
                        "<part id=\"bellowscribe-bass\"><measure number=\"1\"><direction id=\"bellowscribe-w1\"/>"
                                + "<note/></measure></part></score-partwise>");
        ScoreDocument stripped = TinyScore.decode(added).withoutMarks();
        // The white space before the added elements was not theirs here, so it is lost.
        assertEquals(
                own.replace("\n  </part-list>", "</part-list>").replace("\n</score-partwise>", "</score-partwise>"),
                stripped.text());
        assertEquals(1, stripped.noteCount());
    }
}
