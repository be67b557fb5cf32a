package org.bellowscribe.instrument.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The left hand of the library against every published table. */
class PublishedBassesTest {

    private static final String TABLES = """
            # S1: Tom Scarff, G/D chart (order of its eight keys); S4: Bill Farmer, sound emulators; S2: organetto.it.
            dg-21;              D/G 8 bass;                                            S1 S4
            dg-23;              D/G 8 bass;                                            S1 S4
            gc-21;              G/C 8 bass;                                            S2
            cf-21;              C/F 8 bass;                                            moved
            club-cf-31;         C/F 8 bass;                                            from memory
            ad-21;              A/D 8 bass;                                            moved
            # S13: Han Speek, "Bass layouts commonly found on Irish button boxes"; S5: Tom Scarff, B/C chart.
            bc-21;              B/C 8 bass Paolo Soprani;                              S13
            bc-21-inner-d;      B/C 8 bass McComiskey (inner lower push C -> D);       S13 S5
            bc-21-outer-d-g;    B/C 8 bass Burke/Conroy;                               S13
            c-sharp-d-21;       C#/D 8 bass Paolo Soprani;                             S13
            # S15: Kozulich, "Variations on the 3 row diatonic keyboard". The table has pairs of chord and bass without thirds.
            adg-31-no-thirds;   A/D/G 12 bass;                                         S4
            gcf-31-no-thirds;   G/C/F 12 bass;                                         S4 S15
            # S7: "Big Nick", Cajun lessons; S36: Grove entry "Melodeon" (Graeme Smith): tonic and dominant.
            c-10;               one-row C, 2 spoons;                                   S7 S4
            d-10;               one-row D, 2 spoons;                                   moved
            g-10;               one-row G, 2 spoons;                                   moved
            """;

    @ParameterizedTest(name = "{0} is {1} ({2})")
    @CsvSource(textBlock = TABLES, delimiter = ';')
    void everyLeftHandButtonIsAsPublished(String id, String table, String source) {
        List<String> expected = Stream.of("outer", "inner", "")
                .flatMap(column -> column(table, column).stream())
                .toList();
        assertEquals(expected, InstrumentLines.leftHand(InstrumentLines.find(id)), source);
    }

    /** S15: Kozulich: the G/C/F set includes Dm and Am. */
    @Test
    void threeRowsHaveTheirMinorChordsOnThePull() {
        List<String> lines = InstrumentLines.leftHand(InstrumentLines.find("gcf-31"));
        assertEquals("1.1 g d", lines.get(0));
        assertEquals("2.1 e am", lines.get(6));
        assertEquals("2.3 a dm", lines.get(8));
    }

    @Test
    void everyTableIsCompared() {
        List<String> compared = TABLES.lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(";", -1)[1].strip())
                .distinct()
                .toList();
        assertEquals(
                PublishedTable.names("basses.csv").stream().sorted().toList(),
                compared.stream().sorted().toList());
    }

    private static List<String> column(String table, String column) {
        List<String> lines = new ArrayList<>();
        String number = column.equals("inner") ? "2." : "1.";
        for (List<String> line : PublishedTable.of("basses.csv", table)) {
            if (line.get(1).equals(column)) {
                for (String kind : kinds(line.get(3))) {
                    lines.add("%s%d %s %s"
                            .formatted(number, lines.size() + 1, name(kind, line.get(4)), name(kind, line.get(5))));
                }
            }
        }
        return lines;
    }

    private static List<String> kinds(String kind) {
        return switch (kind) {
            case "pair", "bass+chord" -> List.of("chord", "bass");
            default -> List.of(kind);
        };
    }

    private static String name(String kind, String name) {
        return kind.equals("chord") ? name.toLowerCase(Locale.ROOT) : name;
    }
}
