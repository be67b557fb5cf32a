package org.bellowscribe.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated("One test changes the language of the whole process.")
class DefinitionSchemaTest {

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("instrument.xsd");

    @Test
    void elementKeepsItsPlaceTextAndChildren() throws DiagnosedException, IOException {
        DefinitionElement root =
                SCHEMA.read(stream("<instrument id='a' name='A'>\n  <source> a book </source></instrument>"));
        DefinitionElement source = root.children().get(0);
        assertEquals("a book", source.text());
        assertEquals(Place.line(2, 11), source.place());
    }

    @Test
    void schemaFillsInWhatTheFileLeavesOut() throws DiagnosedException, IOException {
        DefinitionElement root = SCHEMA.read(stream("<instrument id='a' name='A'/>"));
        assertEquals(0, root.number("semitones"));
    }

    @Test
    void aFileThatIsTooLargeIsRefusedBeforeItIsRead() {
        String large = "<instrument id='a' name='A'>" + " ".repeat(DefinitionSchema.MOST_BYTES) + "</instrument>";
        assertEquals(List.of(": The file has more than 1048576 bytes, the most that are read here."), remarks(large));
    }

    @Test
    void elementsThatAreNestedTooDeepAreRefused() {
        assertEquals(
                List.of("line 1, column 89: Elements are nested more than 20 deep."),
                remarks("<instrument id='a' name='A'>" + "<x>".repeat(9_000)));
    }

    @Test
    void missingAttributeIsShown() {
        assertEquals(
                List.of("line 1, column 21: Attribute 'name' must appear on element 'instrument'."),
                remarks("<instrument id='a'/>"));
    }

    @Test
    void unknownElementIsShownWithThePossibleOnes() {
        assertEquals(
                List.of(
                        "line 1, column 52: Invalid content was found starting with element 'knob'. One of '{button, reverse,"
                                + " remove}' is expected."),
                remarks("<instrument id='a' name='A'><row number='1'><knob/></row></instrument>"));
    }

    @Test
    void wrongValueOfAnElementIsShownWithItsForm() {
        assertEquals(
                List.of(
                        "line 1, column 63: The value \"lots\" of <capacity> is not allowed. Maybe write a number of RU.s"
                                + " (1 RU.s is the air that one A4 reed takes in a second) from 1 to 1000."),
                remarks("<instrument id='a' name='A'><bellows><capacity>lots</capacity></bellows></instrument>"));
    }

    @Test
    void numberOutOfRangeIsShownWithItsForm() {
        assertEquals(
                List.of(
                        "line 1, column 63: The value \"9999\" of <capacity> is not allowed. Maybe write a number of RU.s"
                                + " (1 RU.s is the air that one A4 reed takes in a second) from 1 to 1000."),
                remarks("<instrument id='a' name='A'><bellows><capacity>9999</capacity></bellows></instrument>"));
    }

    @Test
    void emptyTextIsShownWithItsForm() {
        assertEquals(
                List.of("line 1, column 46: The value \"\" of <source> is not allowed. Maybe write some words."),
                remarks("<instrument id='a' name='A'><source></source></instrument>"));
    }

    @Test
    void remarksAreEnglishEverywhere() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.GERMANY);
        try {
            missingAttributeIsShown();
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void schemaThatIsNotThereIsAMistakeOfTheProgram() {
        assertThrows(IllegalArgumentException.class, () -> DefinitionSchema.of("nothing.xsd"));
    }

    private static List<String> remarks(String xml) {
        DiagnosedException thrown = assertThrows(DiagnosedException.class, () -> SCHEMA.read(stream(xml)));
        return thrown.diagnostics().stream()
                .map(diagnostic -> (diagnostic.place().describe() + ": " + diagnostic.text() + " "
                                + String.join(" ", diagnostic.advice()))
                        .strip())
                .toList();
    }

    private static ByteArrayInputStream stream(String xml) {
        return new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8));
    }
}
