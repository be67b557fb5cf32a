package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import org.bellowscribe.Shared;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("shared")
class EqualMeasuresTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"openewld__Santa_Lucia.musicxml, 7", "airds-airs__book2-0330-The_Milk_Maid.musicxml, 5"})
    void noMeasureIsPlayedOtherwiseWhereTheSameCostsNothing(String file, String semitones) {
        CommandRun run = CommandRun.of(
                "mark",
                Shared.path("corpus/tunes/" + file).toString(),
                "--transpose",
                semitones,
                "--out",
                folder.toString());
        assertEquals(0, run.code(), run.err());
        assertFalse(run.err().contains("would cost 0 points more"), run.err());
    }
}
