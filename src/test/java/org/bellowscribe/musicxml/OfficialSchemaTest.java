package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.SAXParserFactory;
import javax.xml.transform.sax.SAXSource;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import javax.xml.validation.Validator;
import org.bellowscribe.Shared;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;

/** Our check, made from the schema that ProxyMusic ships, against the official files loaded directly. */
@Tag("shared")
class OfficialSchemaTest {

    private static final String NOTE =
            "<note><pitch><step>G</step><octave>4</octave></pitch><duration>1</duration></note>";

    @Test
    void theOfficialTextIsPutBack() throws IOException {
        String official = Files.readString(Shared.path("schema/musicxml.xsd"));
        assertEquals(significant(official), significant(MusicXmlSchema.official(shipped())));
    }

    @Test
    void everySharedScoreGetsTheVerdictOfTheOfficialFiles() throws Exception {
        Schema official = officialSchema();
        int valid = 0;
        int invalid = 0;
        for (Path score : Shared.sample("corpus")) {
            String text = ScoreDocument.decode(Files.readAllBytes(score)).text();
            for (String variant : List.of(text, text.replaceFirst("<duration>[^<]*</duration>", ""))) {
                boolean expected = isValid(official, variant);
                List<SchemaFinding> findings = SchemaCheck.check(variant);
                assertEquals(expected, findings.isEmpty(), () -> score + ": " + findings);
                valid += expected ? 1 : 0;
                invalid += expected ? 0 : 1;
            }
        }
        assertTrue(valid > 10 && invalid > 10, "both verdicts must occur: " + valid + ", " + invalid);
    }

    @Test
    void theBlocksThatProxyMusicLoosensAreJudgedStrictly() throws Exception {
        Schema official = officialSchema();
        for (String measure : List.of(
                NOTE,
                NOTE.replace("<duration>1</duration>", ""),
                NOTE.replace("</note>", "<lyric><elision/><text>a</text></lyric></note>"),
                NOTE.replace(
                        "</note>", "<lyric><text>a</text><syllabic>single</syllabic><text>b</text></lyric></note>"),
                "<direction><direction-type><metronome><beat-unit>half</beat-unit></metronome></direction-type>"
                        + "</direction>",
                NOTE.replace("<pitch>", "<grace/><cue/><pitch>"))) {
            String text = "<score-partwise><part-list><score-part id='P1'><part-name/></score-part></part-list>"
                    + "<part id='P1'><measure number='1'>" + measure + "</measure></part></score-partwise>";
            assertEquals(isValid(official, text), SchemaCheck.check(text).isEmpty(), measure);
        }
    }

    private static Schema officialSchema() throws SAXException, IOException {
        SchemaFactory factory = SchemaFactory.newDefaultInstance();
        Path folder = Shared.path("schema");
        String score = Files.readString(folder.resolve("musicxml.xsd")).replace("http://www.musicxml.org/xsd/", "");
        return factory.newSchema(new StreamSource(
                new java.io.StringReader(score),
                folder.resolve("musicxml.xsd").toUri().toString()));
    }

    private static boolean isValid(Schema schema, String text) throws Exception {
        SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Validator validator = schema.newValidator();
        try {
            validator.validate(new SAXSource(factory.newSAXParser().getXMLReader(), SafeXml.source(text)));
            return true;
        } catch (SAXException e) {
            return false;
        }
    }

    private static String shipped() throws IOException {
        try (InputStream in = OfficialSchemaTest.class.getResourceAsStream("/META-INF/jaxb/xsd/musicxml.xsd")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Leaves out what does not change a verdict: comments, annotations, addresses of imports, white space. */
    private static String significant(String schema) {
        return schema.replaceAll("(?s)<!--.*?-->", "")
                .replaceAll("(?s)<xs:annotation>.*?</xs:annotation>", "")
                .replaceAll("schemaLocation=\"[^\"]*\"", "")
                .replaceAll("\\s+", " ")
                .replaceAll("> <", "><")
                .replaceAll(" (/?>)", "$1");
    }
}
