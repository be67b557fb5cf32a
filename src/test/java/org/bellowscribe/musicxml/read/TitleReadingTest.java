package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.read;
import static org.bellowscribe.musicxml.read.ScoreText.remarks;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Test;

class TitleReadingTest {

    private static final String WORK = "<work><work-title>Harvest Reel</work-title></work>";

    private static Tune titled(String head) {
        return read(score(notes("D5:16")).replace(WORK, head));
    }

    @Test
    void titleOfTheWorkComesFirst() {
        assertEquals(
                "Harvest Reel",
                titled(WORK + "<movement-title>Other</movement-title>").title());
    }

    @Test
    void thenTitleOfTheMovementThenFirstCredit() {
        String credit = "<credit><credit-words font-size=\"12pt\">From a credit</credit-words></credit>";
        assertEquals(
                "Moved",
                titled("<movement-title>Moved</movement-title>" + credit).title());
        assertEquals("From a credit", titled(credit).title());
    }

    @Test
    void entityOfTheFileIsReadAndOneThatNothingDeclaresIsSaidToBeLost() {
        String text = score(notes("D5:16")).replace(WORK, "<work><work-title>Caf&eacute; &dance;</work-title></work>");
        String declared = "<!DOCTYPE score-partwise SYSTEM \"partwise.dtd\" [<!ENTITY dance \"Reel\">]>";
        Tune tune = read(declared + text.substring(text.indexOf("<score-partwise")));
        assertEquals("Caf Reel", tune.title());
        assertEquals(
                "The value \"&eacute;\" of <work-title> is not allowed there and is passed over.",
                remarks(tune, DiagnosticCode.ODD_VALUE).get(0));
    }

    @Test
    void placeholdersAreNoTitles() {
        String placeholder = "<work><work-title>Untitled</work-title></work><movement-title>Title</movement-title>";
        Tune tune = titled(placeholder);
        assertEquals("file name", tune.title());
        assertEquals(
                "The score has no title; it is called \"file name\".",
                remarks(tune, DiagnosticCode.ASSUMED).get(0));
    }

    @Test
    void lineEndsInATitleBecomeSpaces() {
        assertEquals(
                "Two Lines",
                titled("<work><work-title>Two\n  Lines</work-title></work>").title());
    }
}
