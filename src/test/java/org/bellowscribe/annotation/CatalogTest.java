package org.bellowscribe.annotation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

/** Holds every annotator to what users are told about it. */
class CatalogTest {

    private static final Path TESTS = Path.of("src", "test", "java");

    @Test
    void everyIdIsInKebabCase() {
        Annotators.all().forEach(a -> assertTrue(a.id().matches("[a-z]+(-[a-z]+)*"), a.id()));
    }

    @Test
    void everyIdIsUnique() {
        List<String> ids = Annotators.all().stream().map(Annotator::id).toList();
        assertEquals(ids.stream().distinct().toList(), ids);
    }

    @Test
    void everySummaryIsOneSentence() {
        Annotators.all().forEach(a -> assertTrue(a.summary().matches("[A-Z][^.\\n]*\\."), a.summary()));
    }

    @Test
    void everyAnnotatorHasATest() {
        for (Annotator annotator : Annotators.all()) {
            String test = annotator.getClass().getName().replace('.', '/') + "Test.java";
            assertTrue(Files.exists(TESTS.resolve(test)), test);
        }
    }

    @Test
    void everyAnnotatorExplainsWhatItWrites() {
        Arrangement plain = new Sketch(2)
                .push("2.3")
                .bass("G")
                .measure()
                .pull("2.3")
                .air(AirUse.FULL)
                .order(1, 2, 2)
                .arrangement();
        Arrangement arrangement = new Arrangement(plain.tune(), plain.instrument(), plain.solution(), plain.style(), 2);
        // Numbers for other boxes stand only where there are such boxes; signs by name alone are for programs, not
        // readers.
        for (Annotator annotator : Annotators.all()) {
            boolean forOthers = annotator.id().equals("also-buttons");
            assertEquals(forOthers, annotator.marks(arrangement).isEmpty(), annotator.id());
            boolean unread = forOthers || annotator.id().equals("bellows-signs");
            assertEquals(unread, annotator.legend(arrangement).isEmpty(), annotator.id());
        }
    }

    @Test
    void noAnnotatorFailsAtATuneOfRests() {
        Arrangement arrangement = new Sketch(2).rest(BellowsDirection.PUSH).arrangement();
        for (Annotator annotator : Annotators.all()) {
            assertEquals(List.of(), annotator.marks(arrangement), annotator.id());
            assertEquals(List.of(), annotator.legend(arrangement), annotator.id());
        }
    }

    @Test
    void everyMarkOfThePackageIsInTheCatalog() throws IOException {
        Path sources = Path.of("src", "main", "java", "org", "bellowscribe", "annotation", "mark");
        try (Stream<Path> files = Files.list(sources)) {
            List<String> annotators = files.filter(file -> contains(file, "implements Annotator"))
                    .map(file -> file.getFileName().toString().replace(".java", ""))
                    .sorted()
                    .toList();
            assertEquals(
                    annotators,
                    Annotators.all().stream()
                            .map(annotator -> annotator.getClass().getSimpleName())
                            .sorted()
                            .toList());
        }
    }

    private static boolean contains(Path file, String text) {
        try {
            return Files.readString(file).contains(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
