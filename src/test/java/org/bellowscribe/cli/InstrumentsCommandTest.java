package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InstrumentsCommandTest {

    @TempDir
    Path folder;

    @Test
    void aloneItListsTheWholeLibraryWithStatus() {
        CommandRun run = CommandRun.of("instruments");
        assertEquals(0, run.code());
        InstrumentLibrary.all()
                .forEach(entry -> assertTrue(
                        run.out()
                                .lines()
                                .anyMatch(line -> line.strip()
                                                .startsWith(entry.instrument().id() + " ")
                                        && line.contains(" " + entry.status().id() + " ")
                                        && line.endsWith(entry.instrument().name())),
                        () -> entry.instrument().id()));
    }

    @Test
    void listSaysWhatIsOpen() {
        String list = CommandRun.of("instruments").out();
        InstrumentLibrary.all()
                .forEach(entry -> entry.remarks().forEach(remark -> assertTrue(list.contains("- " + remark), remark)));
    }

    @Test
    void showDrawsBothNotesOfEveryButton() {
        CommandRun run = CommandRun.of("instruments", "show", "dg-21");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("push"), run.out());
        assertTrue(run.out().contains("F#4"), run.out());
    }

    @Test
    void showWritesAPageIntoAFile() throws IOException {
        Path page = folder.resolve("new/box.svg");
        CommandRun run = CommandRun.of("instruments", "show", "dg-21", "--svg", page.toString());
        assertEquals(0, run.code());
        assertTrue(Files.readString(page).contains("<svg "));
        assertEquals(page + " written.\n", run.out());
    }

    @Test
    void rangesNameTheHomeKeys() {
        CommandRun run = CommandRun.of("instruments", "ranges", "dg-21");
        assertEquals(0, run.code());
        assertTrue(run.out().lines().anyMatch(line -> line.startsWith("G major ")), run.out());
        assertTrue(run.out().lines().anyMatch(line -> line.startsWith("D major ")), run.out());
        assertTrue(run.out().lines().noneMatch(line -> line.startsWith("Ab major ")), run.out());
    }

    @Test
    void sixWrongValuesGetSixLinesWithTheirPlaces() throws IOException {
        CommandRun run = check("""
                <instrument id='My box' name='Mine' base='dg-21'>
                  <row number='1'>
                    <button number='1' push='H4'/>
                    <button number='77' push='C4'/>
                    <knob number='3' push='C4'/>
                  </row>
                  <left-hand thirds='some'>
                    <column number='1'><button number='1' push='C'/></column>
                  </left-hand>
                </instrument>
                """);
        assertEquals(1, run.code());
        assertEquals(List.of(1, 3, 4, 5, 7, 8), lines(run), run.err());
    }

    @Test
    void sixMusicalMistakesGetSixLinesWithTheirPlaces() throws IOException {
        CommandRun run = check("""
                <instrument id='mine' name='Mine' base='dg-21'>
                  <row number='1'>
                    <button number='1'/>
                    <button number='2' push='B9'/>
                    <button number='3' push='C4'/>
                    <button number='3' push='D4'/>
                    <reverse number='30'/>
                    <remove number='31'/>
                  </row>
                  <left-hand>
                    <column number='1'>
                      <button number='1' kind='bass' push='Em'/>
                    </column>
                  </left-hand>
                </instrument>
                """);
        assertEquals(1, run.code());
        assertEquals(List.of(3, 4, 6, 7, 8, 12), lines(run), run.err());
    }

    @Test
    void mistakesOfTheSchemaAndOfTheMusicAreToldTogether() throws IOException {
        CommandRun run = check("""
                <instrument id='Mine!' name='Mine' base='dg-21'>
                  <row number='1'>
                    <button number='3' push='H4'/>
                    <button number='4' push='D4'/>
                    <button number='4' pull='E4'/>
                    <button number='6'/>
                    <button number='7' push='C9' pull='D5'/>
                  </row>
                  <row number='2'>
                    <reverse number='40'/>
                  </row>
                  <bellows><capacity>much</capacity></bellows>
                </instrument>
                """);
        assertEquals(1, run.code());
        assertEquals(List.of(1, 3, 5, 6, 10, 12), lines(run), run.err());
        assertTrue(run.err().contains("warning [bad-definition] Button 7 of row 1 sounds C9 on the push"), run.err());
        assertFalse(run.err().contains("needs"), "what is missing may stand in what could not be read: " + run.err());
    }

    @Test
    void buttonsThatAreAllWrongAreNotMissingToo() throws IOException {
        CommandRun run = check("""
                <instrument id='mine' name='Mine'>
                  <row number='1'><button number='1' push='H4'/></row>
                </instrument>
                """);
        assertEquals(List.of(2), lines(run), run.err());
    }

    @Test
    void doubtIsNoError() throws IOException {
        CommandRun run = check("""
                <instrument id='mine' name='Mine' base='dg-21'>
                  <left-hand replaces-base='yes'>
                    <column number='1'><button number='1' kind='bass' push='Bb' pull='Eb'/></column>
                  </left-hand>
                </instrument>
                """);
        assertEquals(0, run.code());
        assertTrue(run.err().contains("warning [bad-definition]"), run.err());
    }

    @Test
    void everyInstrumentOfTheLibraryPassesTheCheck() {
        InstrumentLibrary.all()
                .forEach(entry -> assertEquals(
                        0,
                        CommandRun.of("instruments", "check", entry.instrument().id())
                                .code()));
    }

    @Test
    void unknownActionIsAnsweredWithTheNearest() {
        CommandRun run = CommandRun.of("instruments", "chek", "mine.xml");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("Maybe check is meant."), run.err());
    }

    @Test
    void unknownInstrumentIsAnsweredWithTheNearest() {
        CommandRun run = CommandRun.of("instruments", "show", "dg-20");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("Maybe dg-21"), run.err());
    }

    private CommandRun check(String xml) throws IOException {
        Path file = Files.writeString(folder.resolve("mine.xml"), xml);
        return CommandRun.of("instruments", "check", file.toString());
    }

    /** Returns the line of the file that each error names. */
    private static List<Integer> lines(CommandRun run) {
        return run.err()
                .lines()
                .filter(line -> line.contains(": error ["))
                .map(line -> Integer.valueOf(line.replaceFirst(".*: line ([0-9]+), column.*", "$1")))
                .toList();
    }
}
