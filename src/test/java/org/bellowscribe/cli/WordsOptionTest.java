package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WordsOptionTest {

    private static final String TUNE = "samples/book/nine-geese-over.musicxml";

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    private List<String> words(String... options) throws IOException {
        String[] line = new String[options.length + 4];
        System.arraycopy(new String[] {"mark", TUNE, "--out", folder.toString()}, 0, line, 0, 4);
        System.arraycopy(options, 0, line, 4, options.length);
        assertEquals(0, CommandRun.of(line).code());
        return Files.readAllLines(folder.resolve("nine-geese-over.txt"));
    }

    @Test
    void wordsStandBesideTheResult() throws IOException {
        assertEquals(
                List.of("Nine Geese Over", "Instrument: D/G, 21 buttons, low notes"),
                words("--words").subList(0, 2));
    }

    @Test
    void wordsAreInTheLanguageOfTheStyle() throws IOException {
        List<String> words = words("--words", "--style", "german");
        assertEquals("Jede Zeile dauert, bis die nächste beginnt.", words.get(6));
        assertEquals(
                List.of(),
                words.stream().filter(line -> line.contains("button")).skip(1).toList());
    }

    @Test
    void withoutTheOptionThereAreNone() {
        assertEquals(0, CommandRun.of("mark", TUNE, "--out", folder.toString()).code());
        assertFalse(Files.exists(folder.resolve("nine-geese-over.txt")));
    }
}
