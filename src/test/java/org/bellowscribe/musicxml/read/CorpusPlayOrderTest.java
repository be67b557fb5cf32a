package org.bellowscribe.musicxml.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.Shared;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.score.PlayOrder;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The order of play of real tunes against a second way to find it, and of the suite against its own descriptions. */
class CorpusPlayOrderTest {

    /** What makes a tune too odd for a simple-minded player. */
    private static final Set<String> ODD = Set.of(
            "forward-forward",
            "forward-never-closed",
            "ending-never-closed",
            "ending1-stop-without-backward",
            "first-ending-not-1");

    @Tag("shared")
    @Test
    void simplePlayerFindsTheSameOrder() throws IOException, DiagnosedException {
        int compared = 0;
        for (String file : plainTunes()) {
            String text = ScoreDocument.decode(Files.readAllBytes(Shared.path("corpus/tunes/" + file)))
                    .text();
            boolean jumps = text.matches("(?s).*(D\\.[CS]\\.|dacapo|dalsegno).*");
            boolean gap = text.contains("<ending number=\"3\"") && !text.contains("<ending number=\"2\"");
            if (!jumps && !gap) {
                Tune tune = ScoreReader.read(text, file, ReadingOptions.DEFAULT);
                assertEquals(
                        new PlayOrder(PlainPlayer.play(text)).shortForm(),
                        tune.playOrder().shortForm(),
                        file);
                compared++;
            }
        }
        assertTrue(compared > 150, "only %d tunes were compared".formatted(compared));
    }

    private static List<String> plainTunes() throws IOException {
        Path manifest = Shared.path("corpus/tunes/MANIFEST.tsv");
        List<String> header = List.of(Files.readAllLines(manifest).get(0).split("\t"));
        int tags = header.indexOf("structure_tags");
        try (Stream<String> lines = Files.lines(manifest)) {
            return lines.skip(1)
                    .map(line -> line.split("\t", -1))
                    .filter(row -> Stream.of(row[tags].split(",")).noneMatch(ODD::contains))
                    .map(row -> row[0])
                    .collect(Collectors.toList());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "45b-RepeatWithAlternatives.xml | 1-2, 1, 3-4",
                "45d-Repeats-MultipleEndings.xml | 1-2, 1, 3-5, 1, 6-9, 1, 10, 1, 6-9, 1, 10, 1, 6-9, 1, 11-12",
                "45f-Repeats-InvalidEndings.xml | 1-4, 1-8, 6, 9-14",
                "45h-Repeats-Partial.xml | 1-3, 1-5",
                "45j-SimpleRepeat-Start.xml | 1, 1-2"
            })
    void suiteIsPlayedAsItDescribesItself(String file, String order) throws IOException, DiagnosedException {
        String text = Files.readString(Shared.path("corpus/suite/lilypond/" + file));
        // Most of these scores hold only rests; notes in their place make them tunes.
        String sounding = text.replace("<rest/>", "<pitch><step>D</step><octave>5</octave></pitch>");
        assertEquals(
                order,
                ScoreReader.read(sounding, file, ReadingOptions.DEFAULT)
                        .playOrder()
                        .shortForm());
    }
}
