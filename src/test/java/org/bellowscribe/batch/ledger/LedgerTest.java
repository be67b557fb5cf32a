package org.bellowscribe.batch.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerTest {

    private static final Keys KEYS = new Keys("score", "pins", "settings", "definitions", "tool");

    @TempDir
    Path folder;

    private static Entry entry(String place, String result) {
        return new Entry(place, KEYS, List.of(new Entry.File(place, "hash")), result);
    }

    private static byte[] tidied(Ledger ledger) {
        byte[] bytes = ledger.tidied();
        assertNotNull(bytes);
        return bytes;
    }

    @Test
    void whatIsNotedIsThereInTheNextRun() {
        Ledger.open(folder, "").note(entry("a/tune.mxl", "{}"));
        assertEquals(List.of(entry("a/tune.mxl", "{}")), Ledger.open(folder, "").of("a/tune.mxl"));
        assertEquals(List.of(), Ledger.open(folder, "").of("tune.mxl"));
    }

    @Test
    void namesMayHaveTabsLineEndsAndBackslashes() {
        String place = "a\tb\nc\\d\r\\t.mxl";
        Ledger.open(folder, "").note(entry(place, "{\"told\":\"\\n\"}"));
        assertEquals(
                List.of(entry(place, "{\"told\":\"\\n\"}")),
                Ledger.open(folder, "").of(place));
    }

    @Test
    void lineThatWasCutShortDoesNotCountAndSpoilsNoOther() throws IOException {
        Ledger.open(folder, "").note(entry("a.mxl", "{}"));
        Path file = folder.resolve(".bellowscribe-results");
        byte[] bytes = Files.readAllBytes(file);
        for (int length = 1; length < bytes.length - 1; length++) {
            Files.write(file, java.util.Arrays.copyOf(bytes, length));
            assertEquals(List.of(), Ledger.open(folder, "").of("a.mxl"), length + " bytes");
        }
        Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        Ledger.open(folder, "").note(entry("b.mxl", "{}"));
        assertEquals(1, Ledger.open(folder, "").of("b.mxl").size());
    }

    @Test
    void lineInWhichALetterChangedDoesNotCount() throws IOException {
        Ledger.open(folder, "").note(entry("a.mxl", "{}"));
        Path file = folder.resolve(".bellowscribe-results");
        Files.writeString(file, Files.readString(file).replace("settings", "settinks"));
        assertEquals(List.of(), Ledger.open(folder, "").of("a.mxl"));
    }

    @Test
    void tidiedFileIsTheSameInWhateverOrderTunesWereDone() throws IOException {
        Ledger one = Ledger.open(folder.resolve("one"), "");
        one.note(entry("a.mxl", "{}"));
        one.note(entry("b.mxl", "{}"));
        Ledger other = Ledger.open(folder.resolve("other"), "");
        other.note(entry("b.mxl", "{1}"));
        other.note(entry("a.mxl", "{}"));
        other.note(entry("b.mxl", "{}"));
        assertArrayEquals(tidied(one), tidied(other));
        assertFalse(other.isTidy(tidied(other)));
        Files.createDirectories(other.file().getParent());
        Files.write(other.file(), tidied(other));
        assertEquals(1, Ledger.open(folder.resolve("other"), "").of("b.mxl").size());
    }

    @Test
    void whatAnotherRunHasNotedMeanwhileIsKept() throws IOException {
        Ledger one = Ledger.open(folder, "");
        Ledger other = Ledger.open(folder, "");
        one.note(entry("a.mxl", "{}"));
        other.note(entry("b.mxl", "{}"));
        Files.write(one.file(), tidied(one));
        Files.write(other.file(), tidied(other));
        assertEquals(1, Ledger.open(folder, "").of("a.mxl").size());
        assertEquals(1, Ledger.open(folder, "").of("b.mxl").size());
    }

    @Test
    void sharesReadEachOtherButWriteTheirOwn() {
        Ledger.open(folder, "-1-of-2").note(entry("a.mxl", "{}"));
        Ledger whole = Ledger.open(folder, "");
        assertEquals(1, whole.of("a.mxl").size());
        assertNull(whole.tidied());
    }

    @Test
    void fileThatIsMissingOrChangedIsTold() throws IOException {
        Ledger ledger = Ledger.open(folder, "");
        Entry.File file = new Entry.File("a.mxl", ContentHash.of("marks"));
        Entry entry = new Entry("a.mxl", KEYS, List.of(file), "{}");
        assertEquals(file, ledger.changed(entry));
        Files.writeString(folder.resolve("a.mxl"), "marks");
        assertNull(ledger.changed(entry));
        Files.writeString(folder.resolve("a.mxl"), "markS");
        assertEquals(file, ledger.changed(entry));
    }

    @Test
    void whatCouldNotBeNotedIsKeptForTheEnd() throws IOException {
        Files.writeString(folder.resolve("file"), "");
        Ledger ledger = Ledger.open(folder.resolve("file"), "");
        ledger.note(entry("a.mxl", "{}"));
        assertNotNull(ledger.tidied());
    }

    @Test
    void hashTellsContentsApart() {
        assertEquals(ContentHash.of("abc"), ContentHash.of("abc".getBytes(StandardCharsets.UTF_8)));
        assertNotEquals(ContentHash.of("abc"), ContentHash.of("abd"));
        assertEquals("0-0000000000000000", ContentHash.of(""));
        assertEquals("9-cbf43926e3069283", ContentHash.of("123456789"), "the check values of both sums");
    }

    @Test
    void firstDifferenceIsSaidInWords() {
        Keys others = new Keys("other", "pins", "settings", "definitions", "tool");
        assertEquals("the score has changed", others.differenceTo(KEYS));
        assertEquals("", KEYS.differenceTo(KEYS));
        assertEquals(
                "the tool is another", new Keys("score", "pins", "settings", "definitions", "2").differenceTo(KEYS));
    }
}
