package org.bellowscribe.instrument.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The melody buttons of the library against every published table. */
class PublishedLayoutsTest {

    private static final String TABLES = """
            # D/G. S1: Tom Scarff, "Melodeon Key to MIDI Note Number Chart" (G/D, 21+8); S2: organetto.it (ed. I. Salvi) and
            # S3: Rod Stradling, "They Were Also Called Melodeons", for the octave; S4: Bill Farmer, sound emulators.
            # S1 has the fifth on button 1 pull, S4 the sixth: both forms are in the library.
            dg-21;             D/G 21 low notes, 1st button pull = 5th;                  S1, octave S2 S3
            dg-21-sixth;       D/G 21 low notes, 1st button pull = 6th;                  S4 moved
            # Accidentals. S6: a two-row C/F table in public firmware; S9: Han Speek, "Differences between the Irish system and
            # other 2-row boxes", 1996. Makers differ; the library takes the form of S6.
            cf-21-accidentals; C/F 21 accidentals on buttons 1;                          S6
            dg-21-accidentals; D/G 21 accidentals on buttons 1;                          S6 moved
            gc-21-accidentals; G/C 21 accidentals on buttons 1;                          S6 moved
            ad-21-accidentals; A/D 21 accidentals on buttons 1;                          S6 moved
            # S14: Kozulich, "Variations on the 2 1/2 row diatonic keyboard", for the fourth-button start.
            dg-23;             D/G 23 fourth-button start, accidentals + low notes, low pull = 5th; S3 S14 S6 composed
            dg-23-sixth;       D/G 23 fourth-button start, accidentals + low notes, low pull = 6th; S3 S14 S6 composed
            # One row. S7: "Big Nick", Cajun lessons 3, 5, 6; S8: Cajun accordion discussion board. S8 gives both forms of
            # button 1 pull.
            c-10;              one-row C ten button, Cajun / pull 5th;                   S7 S8
            d-10;              one-row D ten button, Cajun / pull 5th;                   S8
            g-10;              one-row G ten button, Cajun / pull 5th;                   S7 S8 moved
            c-10-sixth;        one-row C ten button, German type / pull 6th;             S4 S8
            d-10-sixth;        one-row D ten button, German type / pull 6th;             S4 S8 moved
            g-10-sixth;        one-row G ten button, German type / pull 6th;             S4 S8 moved
            # Semitone systems. S5: Tom Scarff, the same chart for B/C.
            bc-21;             B/C 21;                                                   S5
            c-sharp-d-21;      C#/D 21;                                                  S5 moved, S9
            adg-31;            A/D/G 31;                                                 S4
            gcf-31;            G/C/F 31;                                                 S4
            # S11: schult/midi_concertina, key map; checked by S12: "Concertutor", cross-rowing.
            anglo-cg-30;       Anglo C/G 30 (20 = C and G rows);                         S11 S12
            """;

    private static final String CLUB = "Club C/F (German catalogue)";

    @ParameterizedTest(name = "{0} is {1} ({2})")
    @CsvSource(textBlock = TABLES, delimiter = ';')
    void everyButtonIsAsPublished(String id, String table, String source) {
        assertEquals(lines(table), InstrumentLines.buttons(InstrumentLines.find(id)), source);
    }

    /** S11 and S24: John Kirkpatrick, "How to Play the Anglo": the 20-button has the C and the G row. */
    @Test
    void anglo20HasTheLowerRowsOfAnglo30() {
        List<String> lowerRows = InstrumentLines.buttons(InstrumentLines.find("anglo-cg-30")).stream()
                .filter(line -> !line.startsWith("1."))
                .map(line -> (line.charAt(0) - '1') + line.substring(1))
                .toList();
        assertEquals(lowerRows, InstrumentLines.buttons(InstrumentLines.find("anglo-cg-20")));
    }

    /** S10: "Club accordions" (after an old maker's catalogue): the octaves of the helper row are not published. */
    @Test
    void clubIsAsPublishedButForTheOctavesOfTheHelperRow() {
        List<String> published = lines(CLUB);
        List<String> buttons = InstrumentLines.buttons(InstrumentLines.find("club-cf-31")).stream()
                .map(line -> line.startsWith("3.") ? line.replaceAll("(?<=[A-G#b])\\d", "") : line)
                .toList();
        assertEquals(published, buttons);
    }

    @Test
    void everyTableIsCompared() {
        List<String> compared = TABLES.lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(";", -1)[1].strip())
                .toList();
        List<String> missing = PublishedTable.names("layouts.csv").stream()
                .filter(name -> !compared.contains(name))
                .toList();
        assertEquals(List.of(CLUB), missing);
    }

    /** Rows stand in the tables in the order outer to inner. */
    private static List<String> lines(String table) {
        List<List<String>> lines = PublishedTable.of("layouts.csv", table);
        List<String> rows = lines.stream().map(line -> line.get(1)).distinct().toList();
        return lines.stream()
                .map(line ->
                        "%d.%s %s %s".formatted(1 + rows.indexOf(line.get(1)), line.get(2), line.get(3), line.get(4)))
                .toList();
    }
}
