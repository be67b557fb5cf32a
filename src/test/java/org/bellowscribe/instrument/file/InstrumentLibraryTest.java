package org.bellowscribe.instrument.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.junit.jupiter.api.Test;

class InstrumentLibraryTest {

    private static final Pattern ID = Pattern.compile("<instrument id=\"([^\"]+)\"");

    @Test
    void defaultInstrumentIsInTheLibrary() {
        assertEquals("dg-21", InstrumentLines.find(InstrumentLibrary.DEFAULT_ID).id());
    }

    @Test
    void everyInstrumentNamesItsSources() {
        for (LibraryEntry entry : InstrumentLibrary.all()) {
            assertFalse(entry.sources().isEmpty(), entry.instrument().id());
        }
    }

    @Test
    void everyInstrumentFileBelongsToTheLibrary() throws IOException {
        List<String> ids = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("shared", "instruments"))) {
            for (Path file : files.toList()) {
                for (Matcher id = ID.matcher(Files.readString(file)); id.find(); ) {
                    ids.add(id.group(1));
                }
            }
        }
        List<String> loaded = InstrumentLibrary.all().stream()
                .map(entry -> entry.instrument().id())
                .sorted()
                .toList();
        assertEquals(ids.stream().sorted().toList(), loaded);
    }

    @Test
    void instrumentsThatNoSourceSettlesSaySo() {
        for (LibraryEntry entry : InstrumentLibrary.all()) {
            if (entry.status() == SourceStatus.OPEN || entry.status() == SourceStatus.COMPOSED) {
                assertFalse(entry.remarks().isEmpty(), entry.instrument().id());
            }
            assertFalse(entry.status() == SourceStatus.OWN, entry.instrument().id());
        }
    }

    @Test
    void everyInstrumentCanBeMovedByTwoOctaves() {
        for (LibraryEntry entry : InstrumentLibrary.all()) {
            for (int semitones : new int[] {-24, 24}) {
                assertEquals(
                        entry.instrument().buttons().size(),
                        Transposition.of(entry.instrument(), semitones)
                                .buttons()
                                .size());
            }
        }
    }

    @Test
    void bellowsAreTheEngineeringEstimate() {
        assertEquals(new Bellows(40, 0.08, 7, 20), InstrumentLines.find("dg-21").bellows());
    }

    @Test
    void reedsAreTheEngineeringEstimate() {
        assertEquals(
                new AirModel(440, 1, 0.25, 4, List.of(0, 0), 6, 4, 2.7, 0.05),
                InstrumentLines.find("dg-21").air());
    }

    @Test
    void unknownNameIsAnsweredWithTheNearestAndTheCommandThatListsAll() {
        DiagnosedException thrown = assertThrows(DiagnosedException.class, () -> InstrumentLibrary.find("dg21"));
        Diagnostic diagnostic = thrown.diagnostics().get(0);
        assertEquals(DiagnosticCode.UNKNOWN_NAME, diagnostic.code());
        assertEquals("The library has no instrument dg21.", diagnostic.text());
        assertEquals(List.of("Maybe dg-21.", "The command instruments list shows all."), diagnostic.advice());
    }

    @Test
    void missingFileIsUnreadable() {
        DiagnosedException thrown =
                assertThrows(DiagnosedException.class, () -> InstrumentLibrary.find("boxes/mine.xml"));
        assertEquals(DiagnosticCode.UNREADABLE, thrown.diagnostics().get(0).code());
    }

    @Test
    void onlyRowsASemitoneApartAreUsuallyPlayedAcross() {
        for (LibraryEntry entry : InstrumentLibrary.all()) {
            boolean semitone = entry.family().equals("Two rows a semitone apart");
            assertEquals(
                    semitone ? "across-the-rows" : null,
                    entry.manner(),
                    entry.instrument().id());
        }
    }
}
