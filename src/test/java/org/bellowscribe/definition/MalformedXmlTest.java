package org.bellowscribe.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of data files that are no XML. */
class MalformedXmlTest {

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("settings.xsd");
    private static final String UTF_8 = "  Save it as UTF-8, with encoding=\"UTF-8\" in its first line or none.";

    private static String told(byte[] file) {
        DiagnosedException thrown =
                assertThrows(DiagnosedException.class, () -> SCHEMA.read(new ByteArrayInputStream(file)));
        assertEquals(1, thrown.diagnostics().size());
        return thrown.diagnostics().get(0).print("f").substring("f: ".length());
    }

    private static String told(String file) {
        return told(file.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void aTagThatIsNotClosedIsNamedWithItsLine() {
        assertEquals("""
                line 3, column 3: error [not-xml] <tune> of line 2 is not closed where </settings> stands.
                  Maybe write </tune> before it, or /> at the end of its tag if nothing is in it.""", told("<settings>\n <tune file='a'>\n</settings>"));
    }

    @Test
    void capitalsOfAnEndTagCount() {
        assertEquals("""
                line 1, column 13: error [not-xml] <settings> of line 1 is not closed where </Settings> stands.
                  Write </settings>: capitals count.""", told("<settings></Settings>"));
    }

    @Test
    void aFileThatEndsTooEarlyNamesWhatIsOpen() {
        assertEquals("""
                line 3, column 1: error [not-xml] The file ends, but <settings> of line 1 is not closed.
                  Maybe write </settings> at its end.""", told("<settings>\n<tune file='a'/>\n"));
        assertEquals("""
                line 2, column 11: error [not-xml] The file ends within the tag of line 2.
                  Maybe it was cut off, or a > is missing.""", told("<settings>\n<tune file"));
        assertEquals("""
                line 2, column 12: error [not-xml] The file ends, but the comment of line 2 is not closed.
                  Write --> behind it.""", told("<settings>\n<!-- a > b "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "<settings times=once/>|17|The value of times in <settings> does not stand in quotes.|Write times=\"...\","
                        + " with straight quotes.",
                "<settings times=\u201Conce\u201D/>|17|The value of times in <settings> does not stand in quotes.|Write"
                        + " times=\"...\", with straight quotes.",
                "<settings root/>|15|root in <settings> has no value.|Write root=\"...\".",
                "<settings times=\"once><tune file=\"a\"/></settings>|23|The value of times in <settings> goes on to a sign"
                        + " <.|Maybe its second quote is missing; for the sign itself write &lt;.",
                "<settings style=\"Tom & Jerry.xml\"/>|23|A sign & stands alone.|Write &amp; for it.",
                "<settings style=\"a&b.xml\"/>|25|A sign & stands alone.|Write &amp; for it.",
                "<settings style=\"a&amp b.xml\"/>|23|&amp lacks its semicolon.|Write &amp;.",
                "<settings style=\"&uuml;\"/>|24|&uuml; stands for nothing here.|Maybe write the character itself; for a"
                        + " sign & write &amp;.",
                "<settings times=\"once\" times=\"again\"/>|39|times stands twice in <settings>.|Leave one of them out.",
                "<settings times=\"once\"root=\"yes\"/>|23|In the tag <settings> stands something that is neither an"
                        + " attribute nor its end.|Maybe a space is missing between two attributes, or > at the end.",
                "<settings>< tune/></settings>|12|A sign < stands here that begins no tag.|Write &lt; for it; a tag has no"
                        + " space behind its <.",
                "<settings><!-- a -- b --></settings>|20|Two hyphens stand within a comment.|Write one, or a space between"
                        + " them.",
                "times=once|1|Text stands before the first tag.|Maybe take it away, or another file is meant.",
                "` <?xml version='1.0'?><settings/>`|7|Something stands before <?xml, which must be the very first of the"
                        + " file.|Maybe delete what stands before it, empty lines and spaces too.",
                "<settings/><tune file='a'/>|13|Something stands behind the end of the file's one element.|Maybe its end"
                        + " tag comes too early, or its first tag ends in />.",
                "<settings/> x|13|Something stands behind the end of the file's one element.|Maybe its end tag comes too"
                        + " early, or its first tag ends in />.",
            })
    void commonSlipsAreToldInPlainWords(String file, int column, String text, String advice) {
        assertEquals("line 1, column %d: error [not-xml] %s\n  %s".formatted(column, text, advice), told(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n\n", "\uFEFF"})
    void anEmptyFileIsToldToBeEmpty(String file) {
        assertEquals("""
                line 1, column 1: error [empty-file] The file is empty.
                  Maybe it was not saved, or another file is meant.""", told(file));
    }

    @Test
    void aFileWithoutElementIsNotEmpty() {
        assertEquals("""
                line 1, column 11: error [not-xml] The file ends before its first tag.
                  Maybe it was cut off.""", told("<!-- x -->"));
    }

    @Test
    void aByteThatIsNoUtf8HasItsOwnPlace() {
        byte[] file = "<settings>\n<tune file='\u00FC'/></settings>".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(
                "line 2, column 13: error [not-xml] The byte FC cannot be read here as UTF-8.\n" + UTF_8, told(file));
    }

    @Test
    void encodingsThatAreNamedWronglyAreTold() {
        String text = "<?xml version='1.0' encoding='%s'?><settings style='\u00FC'/>";
        String named = "line 1, column 1: error [not-xml] The file is not written in the encoding that its first line"
                + " names.\n" + UTF_8;
        assertEquals(named, told(text.formatted("UTF-16")));
        assertEquals(named, told(text.formatted("UTF-8").getBytes(StandardCharsets.UTF_16)));
        assertEquals(
                "line 1, column 1: error [not-xml] The file says that it is written in latin-9000, an encoding not known"
                        + " here.\n  Maybe save it as UTF-8.",
                told(text.formatted("latin-9000")));
        assertFalse(told(text.formatted("US-ASCII")).contains("member"), told(text.formatted("US-ASCII")));
    }

    @Test
    void whatIsNotKnownKeepsTheSentenceOfTheParser() {
        assertEquals(
                "line 1, column 13: error [not-xml] The file is not well-formed XML: An invalid XML character (Unicode:"
                        + " 0x1) was found in the element content of the document.",
                told("<settings>ab\u0001</settings>"));
    }
}
