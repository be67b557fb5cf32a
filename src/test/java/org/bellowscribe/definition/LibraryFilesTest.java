package org.bellowscribe.definition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LibraryFilesTest {

    @ParameterizedTest
    @CsvSource({
        "gradings, grading.xsd",
        "instruments, instrument.xsd",
        "manners, manner.xsd",
        "patterns, pattern.xsd",
        "practice, changes.xsd",
        "styles, style.xsd"
    })
    void filesOfTheToolAreValidAndSayTheSameWithoutTheirSchema(String folder, String name)
            throws IOException, DiagnosedException {
        DefinitionSchema schema = DefinitionSchema.of(name);
        LibraryFiles files = new LibraryFiles(folder, schema);
        List<Path> all;
        try (Stream<Path> found = Files.list(Path.of("shared", folder))) {
            all = found.sorted().toList();
        }
        assertFalse(all.isEmpty());
        for (Path file : all) {
            try (InputStream stream = Files.newInputStream(file)) {
                String fileName = file.getFileName().toString().replace(".xml", "");
                assertEquals(schema.read(stream), files.root(fileName), file.toString());
            }
        }
    }
}
