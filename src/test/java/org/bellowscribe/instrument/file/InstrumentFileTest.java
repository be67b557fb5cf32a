package org.bellowscribe.instrument.file;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.instrument.Instrument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Instrument files of users. */
class InstrumentFileTest {

    @TempDir
    Path folder;

    @Test
    void buttonOfTheFileReplacesTheOneOfTheBase() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21'>"
                + "<row number='2'><button number='1' push='F5' pull='Eb5'/></row></instrument>");
        assertEquals("F5 Eb5 D4", InstrumentLines.sounds(own, "2.1 2.1' 2.2"));
    }

    @Test
    void reversedButtonExchangesPushAndPull() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21'>"
                + "<row number='2'><reverse number='5'/></row></instrument>");
        assertEquals("E5 D5", InstrumentLines.sounds(own, "2.5 2.5'"));
    }

    @Test
    void helperRowStandsBesideTheRowsOfTheBase() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21'>"
                + "<row number='3'><button number='1' push='E4'/></row></instrument>");
        assertEquals(3, own.rows());
        assertEquals("E4 -", InstrumentLines.sounds(own, "3.1 3.1'"));
    }

    @Test
    void removedButtonIsGone() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21'>"
                + "<row number='1'><remove number='11'/></row></instrument>");
        assertEquals(20, own.buttons().size());
    }

    @Test
    void semitonesMoveButtonsAndLeftHand() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21' semitones='-2'/>");
        assertEquals("C4 F4", InstrumentLines.sounds(own, "1.3 2.3"));
        assertEquals("1.1 c g", InstrumentLines.leftHand(own).get(0));
    }

    @Test
    void reedsThatLieLowerTakeMoreAir() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21' semitones='-12'/>");
        Instrument base = InstrumentLines.find("dg-21");
        assertEquals(
                2 * base.air().flow(requireNonNull(base.buttons().get(3).push())),
                own.air().flow(requireNonNull(own.buttons().get(3).push())),
                1e-9);
    }

    @Test
    void withoutThirdsTheMinorChordIsNeutral() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21'><left-hand thirds='none'/></instrument>");
        assertEquals("2.1 b e", InstrumentLines.leftHand(own).get(4));
        assertEquals(2.7, own.air().flow(requireNonNull(own.leftHand().get(4).pull())));
    }

    @Test
    void emptyLeftHandThatReplacesTheBaseLeavesNoBassSide() throws IOException {
        Instrument own =
                read("<instrument id='mine' name='Mine' base='dg-21'><left-hand replaces-base='yes'/></instrument>");
        assertEquals(List.of(), own.leftHand());
    }

    @Test
    void extraBassesStandBesideThoseOfTheBase() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21'><left-hand><column number='3'>"
                + "<button number='1' kind='chord' push='Am' pull='F'/></column></left-hand></instrument>");
        assertEquals("3.1 am f", InstrumentLines.leftHand(own).get(8));
    }

    @Test
    void mirroredBoxLiesUnderTheLeftHand() throws IOException {
        Instrument own = read("<instrument id='mine' name='Mine' base='dg-21' mirrored='yes'/>");
        assertTrue(own.buttons().stream().allMatch(button -> button.hand() == Hand.LEFT));
    }

    @Test
    void bellowsAndReedsOfTheFileReplaceThoseOfTheBaseOneByOne() throws IOException {
        Instrument own =
                read("<instrument id='mine' name='Mine' base='dg-21'><bellows><capacity>25</capacity></bellows>"
                        + "<reeds><voices>-1 0 0</voices></reeds></instrument>");
        assertEquals(25, own.bellows().capacity());
        assertEquals(0.08, own.bellows().reserve());
        assertEquals(List.of(-1, 0, 0), own.air().voices());
        assertEquals(6, own.air().bassFlow());
    }

    @Test
    void wrongNoteNameIsShownWithLineAndForm() {
        assertEquals(
                List.of(
                        "mine.xml: line 2, column 47: error [bad-definition] The value \"H4\" of push in <button> is not"
                                + " allowed.\n  Maybe write a letter A to G, # or b if there is one, and an octave, such as F#4"
                                + " (C4 is middle C)."),
                remarks("<instrument id='mine' name='Mine' base='dg-21'>\n"
                        + "<row number='2'><button number='1' push='H4'/></row></instrument>"));
    }

    @Test
    void everyWrongThingIsShownAtOnce() {
        assertEquals(
                List.of(
                        "mine.xml: line 1, column 84: error [bad-definition] Button 1 of row 2 sounds neither on the push"
                                + " nor on the pull.\n  Maybe give it push, pull or both, or write <remove> for a button"
                                + " that is not there.",
                        "mine.xml: line 1, column 106: error [bad-definition] Button 30 of row 2 cannot be reversed,"
                                + " because the base does not have it."),
                remarks("<instrument id='mine' name='Mine' base='dg-21'><row number='2'><button number='1'/>"
                        + "<reverse number='30'/></row></instrument>"));
    }

    @Test
    void placeGivenTwiceIsShownWithBothPlaces() {
        assertEquals(
                List.of(
                        "mine.xml: line 2, column 31: error [bad-definition] Button 1 of row 1 is given twice: the first"
                                + " time in line 1, column 91.\n  Maybe give it another number."),
                remarks("<instrument id='mine' name='Mine'><row number='1'><button number='1' push='C4' pull='D4'/>\n"
                        + "<button number='1' push='E4'/></row></instrument>"));
    }

    @Test
    void noteOutsideTheRangeIsShown() {
        assertEquals(
                List.of("mine.xml: line 1, column 91: error [bad-definition] Button 1 of row 1 sounds B9 on the pull,"
                        + " which is too high or too low.\n  Maybe choose another octave: C4 is middle C."),
                remarks("<instrument id='mine' name='Mine'><row number='1'>"
                        + "<button number='1' push='C4' pull='B9'/></row></instrument>"));
    }

    @Test
    void bassWithAMinorChordIsShown() {
        assertEquals(
                List.of("mine.xml: line 2, column 43: error [bad-definition] Button 1 of column 1 is a bass and cannot"
                        + " sound the minor chord Em.\n  Maybe write E, or kind=\"chord\"."),
                remarks("<instrument id='mine' name='Mine' base='dg-21'><left-hand><column number='1'>\n"
                        + "<button number='1' kind='bass' push='Em'/></column></left-hand></instrument>"));
    }

    @Test
    void airButtonThatPassesMoreAirWhenLightIsShown() {
        assertEquals(
                List.of("mine.xml: line 1, column 48: error [bad-definition] The light flow of the air button (30.0) is"
                        + " more than its full flow (20.0).\n  Maybe give both in <air-button>."),
                remarks("<instrument id='mine' name='Mine' base='dg-21'>"
                        + "<air-button><light-flow>30</light-flow></air-button></instrument>"));
    }

    @Test
    void unknownBaseIsAnsweredWithTheNearest() {
        List<String> lines = remarks("<instrument id='mine' name='Mine' base='dg-20'/>");
        assertTrue(
                lines.get(0)
                        .startsWith("mine.xml: line 1, column 49: error [unknown-name] The library has no instrument"
                                + " dg-20.\n  Maybe dg-21 or dg-23.\n  The command instruments list shows all."),
                lines::toString);
    }

    @Test
    void fileOfSeveralInstrumentsIsRefused() {
        assertEquals(
                List.of(
                        "mine.xml: line 1, column 25: error [bad-definition] The root element is <instruments>, but an"
                                + " instrument file holds one <instrument>.\n  Maybe put each instrument into a file of its own."),
                remarks("<instruments family='f'><instrument id='mine' name='Mine' base='dg-21'/></instruments>"));
    }

    @Test
    void missingButtonsAreShown() {
        assertEquals(
                List.of("mine.xml: line 1, column 36: error [bad-definition] The instrument mine has no melody buttons."
                        + "\n  Maybe give its rows, or a base."),
                remarks("<instrument id='mine' name='Mine'/>"));
    }

    @Test
    void brokenXmlIsShownWithItsPlace() {
        List<String> lines = remarks("<instrument id='mine'\n name='Mine'>");
        assertTrue(lines.get(0).startsWith("mine.xml: line 2, column 14: error [not-xml] "), lines::toString);
    }

    @Test
    void doctypeIsRefused() {
        assertEquals(
                List.of(
                        "mine.xml: line 1, column 10: error [bad-definition] The file has a DOCTYPE, which is not allowed"
                                + " here.\n  Maybe remove the line that begins with <!DOCTYPE."),
                remarks("<!DOCTYPE instrument [<!ENTITY a 'b'>]><instrument/>"));
    }

    @Test
    void textThatIsNotUtf8IsRefused() throws IOException {
        Path file = Files.write(folder.resolve("mine.xml"), new byte[] {'<', 'a', (byte) 0xFF, '/', '>'});
        DiagnosedException thrown =
                assertThrows(DiagnosedException.class, () -> InstrumentLibrary.find(file.toString()));
        assertEquals(
                "line 1, column 3: error [not-xml] The byte FF cannot be read here as UTF-8.\n  Save it as UTF-8, with"
                        + " encoding=\"UTF-8\" in its first line or none.",
                thrown.diagnostics().get(0).print("mine").substring("mine: ".length()));
    }

    private Instrument read(String xml) throws IOException {
        return InstrumentLines.find(write(xml).toString());
    }

    private List<String> remarks(String xml) {
        DiagnosedException thrown = assertThrows(
                DiagnosedException.class,
                () -> InstrumentLibrary.find(write(xml).toString()));
        return thrown.diagnostics().stream()
                .map(diagnostic -> diagnostic.print("mine.xml"))
                .toList();
    }

    private Path write(String xml) throws IOException {
        return Files.writeString(folder.resolve("mine.xml"), xml);
    }
}
