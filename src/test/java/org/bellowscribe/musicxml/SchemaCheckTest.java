package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.Place;
import org.junit.jupiter.api.Test;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

class SchemaCheckTest {

    private static final String NOTE =
            "<note><pitch><step>G</step><octave>4</octave></pitch><duration>1</duration></note>";

    private static String score(String measure) {
        return "<?xml version='1.0' encoding='UTF-16'?>\n"
                + "<!DOCTYPE score-partwise PUBLIC '-//Recordare//DTD MusicXML 4.0 Partwise//EN' "
                + "'http://www.musicxml.org/dtds/partwise.dtd'>\n"
                + "<score-partwise version='4.0'>\n"
                + "<part-list><score-part id='P1'><part-name>Melodeon</part-name></score-part></part-list>\n"
                + "<part id='P1'>\n<measure number='1'>" + NOTE + "</measure>\n<measure number='2'>" + measure
                + "</measure>\n</part>\n</score-partwise>";
    }

    private static SchemaFinding only(String text) {
        List<SchemaFinding> findings = SchemaCheck.check(text);
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void aValidScoreHasNoFindings() {
        assertEquals(List.of(), SchemaCheck.check(score(NOTE)));
    }

    @Test
    void moreOfAnElementThanAllowedIsAFinding() {
        String tie = "<tie type='stop'/>";
        SchemaFinding finding = only(score(NOTE.replace("</note>", tie + tie + tie + "</note>")));
        assertTrue(finding.message().contains("tie"), finding.message());
    }

    @Test
    void aBadValueOfAnElementIsOneFindingWithItsPlace() {
        SchemaFinding finding = only(score(NOTE.replace("<octave>4", "<octave>x")));
        assertEquals(new Place(2, "2", "P1", 7, 66), finding.place());
        assertEquals("octave", finding.element());
        assertEquals("", finding.attribute());
        assertEquals("'x' is not a valid value for 'integer'.", finding.message());
    }

    @Test
    void aBadValueOfAnAttributeNamesTheAttribute() {
        SchemaFinding finding = only(score(NOTE.replace("<note>", "<note default-y='12px'>")));
        assertEquals("note", finding.element());
        assertEquals("default-y", finding.attribute());
        assertEquals("'12px' is not a valid value for 'decimal'.", finding.message());
    }

    @Test
    void aNoteWithoutDurationIsFound() {
        SchemaFinding finding = only(score(NOTE.replace("<duration>1</duration>", "")));
        assertEquals("note", finding.element());
        assertTrue(finding.message().contains("duration"), finding.message());
    }

    @Test
    void anUnknownElementIsFound() {
        SchemaFinding finding = only(score(NOTE.replace("</note>", "<surprise/></note>")));
        assertEquals("surprise", finding.element());
    }

    @Test
    void anUndeclaredPrefixIsAFindingAndTheRestIsStillChecked() {
        String text = score("<link xlink:href='a.pdf'/>" + NOTE.replace("<octave>4", "<octave>x"));
        List<SchemaFinding> findings = SchemaCheck.check(text);
        assertEquals(
                List.of("xlink:href", ""),
                findings.stream().map(SchemaFinding::attribute).toList(),
                findings::toString);
        assertEquals(
                "The prefix 'xlink' is used but not declared.", findings.get(0).message());
    }

    @Test
    void aDeclaredPrefixIsNoFinding() {
        String text = score("<link xmlns:xlink='http://www.w3.org/1999/xlink' xlink:href='a.pdf'/>" + NOTE);
        assertEquals(List.of(), SchemaCheck.check(text));
    }

    @Test
    void brokenXmlIsTheLastFinding() {
        SchemaFinding finding = only(score(NOTE + "</note>"));
        assertEquals(7, finding.place().line());
    }

    @Test
    void anEntityBombIsTheLastFinding() {
        String bomb = score(NOTE)
                .replaceFirst(
                        "partwise.dtd'>",
                        "partwise.dtd' [<!ENTITY a 'hahahaha'><!ENTITY b '" + "&a;".repeat(50) + "'><!ENTITY c '"
                                + "&b;".repeat(50) + "'>]>")
                .replace("Melodeon", "&c;");
        assertTrue(only(bomb).message().contains("entity"), only(bomb).message());
    }

    @Test
    void deepNestingIsTheLastFinding() {
        String deep = "<a>".repeat(100_000) + "</a>".repeat(100_000);
        List<SchemaFinding> findings = SchemaCheck.check(deep);
        assertEquals(
                "Elements stand inside each other more than 1000 deep.",
                findings.get(findings.size() - 1).message());
    }

    @Test
    void aTextTooLargeIsNotParsed() {
        SchemaFinding finding = only(" ".repeat(ScoreDocument.MAX_BYTES + 1));
        assertEquals("The text has 67108865 characters, and a score may have 67108864.", finding.message());
    }

    @Test
    void findingsEndAtALimit() {
        String text = score("<note default-x='?'/>".repeat(5_000));
        assertEquals(SchemaFindings.MAX_FINDINGS, SchemaCheck.check(text).size());
    }

    @Test
    void aTimewiseMeasureIsCountedAcrossItsParts() {
        String text = "<score-timewise version='4.0'><part-list><score-part id='P1'><part-name/></score-part>"
                + "<score-part id='P2'><part-name/></score-part></part-list>"
                + "<measure number='5'><part id='P1'>" + NOTE + "</part><part id='P2'>"
                + NOTE.replace("<octave>4", "<octave>10") + "</part></measure></score-timewise>";
        assertEquals(
                "measure 5 (1 in the file), part P2, line 1, column 327",
                only(text).place().describe());
    }

    @Test
    void readerHearsTheWholeTextAfterTheCheckHasHadEnough() throws SAXException {
        String text = score(NOTE.replace("<note>", "<note default-x=\"?\">").repeat(SchemaFindings.MAX_FINDINGS + 50));
        List<String> heard = new ArrayList<>();
        List<SchemaFinding> findings = SchemaCheck.checkWhileRead(text, new DefaultHandler() {
            @Override
            public void startElement(String uri, String localName, String name, Attributes attributes) {
                heard.add(name);
            }
        });
        assertEquals(SchemaCheck.check(text), findings);
        assertEquals(
                SchemaFindings.MAX_FINDINGS + 51,
                heard.stream().filter("note"::equals).count());
    }
}
