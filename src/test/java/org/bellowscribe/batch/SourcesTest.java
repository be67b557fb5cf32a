package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourcesTest {

    @TempDir
    Path folder;

    private Path out;

    @BeforeEach
    void nameTheFolderForResults() {
        out = folder.resolve("out");
    }

    private String file(String name) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "<score-partwise version=\"4.0\"></score-partwise>");
        return file.toString();
    }

    private List<String> targets(Sources sources) {
        return sources.found().stream()
                .map(source -> folder.relativize(source.target()).toString().replace('\\', '/'))
                .toList();
    }

    private static List<String> texts(Sources sources) {
        return sources.problems().stream()
                .map(problem -> problem.diagnostic().text())
                .toList();
    }

    @Test
    void scoresOfAFolderKeepTheirSubFoldersAndComeByName() throws IOException {
        file("in/b.xml");
        file("in/a/z.mxl");
        file("in/A.MusicXML");
        file("in/notes.txt");
        Sources sources = Sources.find(List.of(folder.resolve("in").toString()), out, false);
        assertEquals(List.of("out/A.MusicXML", "out/a/z.mxl", "out/b.xml"), targets(sources));
        assertEquals(List.of(), sources.problems());
    }

    @Test
    void otherXmlOfAFolderIsPassedOverButNotWhenNamed() throws IOException {
        String instrument = file("in/box.xml");
        Files.writeString(Path.of(instrument), "<instrument id=\"a\"/>");
        file("in/tune.xml");
        assertEquals(List.of("out/tune.xml"), targets(Sources.find(List.of(folder + "/in"), out, false)));
        assertEquals(List.of("out/box.xml"), targets(Sources.find(List.of(instrument), out, false)));
    }

    @Test
    void scoreBehindALongCommentAndOneInAnotherEncodingAreFound() throws IOException {
        Files.writeString(Path.of(file("in/a.xml")), "<!--" + "-.".repeat(20_000) + "--><score-partwise/>");
        Files.write(Path.of(file("in/b.xml")), "\uFEFF<score-timewise/>".getBytes(StandardCharsets.UTF_16LE));
        Files.write(Path.of(file("in/c.xml")), "\uFEFF<opus/>".getBytes(StandardCharsets.UTF_16BE));
        Files.writeString(Path.of(file("in/d.xml")), "%PDF-1.7");
        assertEquals(List.of("out/a.xml", "out/b.xml"), targets(Sources.find(List.of(folder + "/in"), out, false)));
    }

    @Test
    void hiddenFilesAndFoldersArePassedOver() throws IOException {
        file("in/.store/tune.xml");
        file("in/._tune.xml");
        file("in/tune.xml");
        assertEquals(List.of("out/tune.xml"), targets(Sources.find(List.of(folder + "/in"), out, false)));
    }

    @Test
    void resultsInsideTheInputFolderAreNoInput() throws IOException {
        file("tune.xml");
        file("out/tune.xml");
        assertEquals(List.of("out/tune.xml"), targets(Sources.find(List.of(folder.toString()), out, false)));
    }

    @Test
    void missingFileAndEmptyFolderAreSaid() throws IOException {
        Files.createDirectories(folder.resolve("empty"));
        Sources sources = Sources.find(List.of(folder + "/no.xml", folder + "/empty"), out, false);
        assertEquals(
                List.of("There is no such file or folder.", "The folder holds no score (.musicxml, .xml or .mxl)."),
                texts(sources));
        assertEquals(
                DiagnosticCode.UNREADABLE,
                sources.problems().get(0).diagnostic().code());
    }

    @Test
    void inputIsNeverOverwrittenByItsOwnResult() throws IOException {
        String tune = file("out/tune.xml");
        Sources sources = Sources.find(List.of(tune), out, false);
        assertEquals(List.of(), sources.found());
        assertTrue(texts(sources).get(0).startsWith("The result would take the place of the input"));
    }

    @Test
    void inputIsNeverOverwrittenByTheResultOfAnother() throws IOException {
        Sources sources = Sources.find(List.of(file("a/tune.xml"), file("out/tune.xml")), out, false);
        assertEquals(List.of(), sources.found());
        assertEquals(2, sources.problems().size());
    }

    @Test
    void twoInputsNeverShareAResult() throws IOException {
        Sources sources = Sources.find(List.of(file("a/tune.xml"), file("b/Tune.xml")), out, false);
        assertEquals(List.of("out/tune.xml"), targets(sources));
        assertTrue(texts(sources).get(0).startsWith("The result would take the place of that of"));
        assertEquals(folder + "/b/Tune.xml", sources.problems().get(0).input().replace('\\', '/'));
    }

    @Test
    void twoInputsNeverShareARecord() throws IOException {
        List<String> inputs = List.of(file("a/tune.xml"), file("a/tune.mxl"));
        assertEquals(2, Sources.find(inputs, out, false).found().size());
        Sources sources = Sources.find(inputs, out, true);
        assertEquals(
                List.of("tune.record.json", "tune.mxl.record.json"),
                sources.found().stream()
                        .map(source -> String.valueOf(source.recordTarget().getFileName()))
                        .toList());
    }

    @Test
    void fileNamedTwiceIsTakenOnce() throws IOException {
        String tune = file("in/tune.xml");
        Sources sources = Sources.find(List.of(tune, folder + "/in", folder + "/in/../in/tune.xml"), out, false);
        assertEquals(List.of("out/tune.xml"), targets(sources));
        assertEquals(List.of(), sources.problems());
    }

    @Test
    void inPlaceTheResultIsTheInput() throws IOException {
        file("in/a/tune.xml");
        Sources sources = Sources.find(List.of(folder + "/in"), null, true);
        assertEquals(List.of("in/a/tune.xml"), targets(sources));
        assertEquals(
                "tune.record.json",
                sources.found().get(0).recordTarget().getFileName().toString());
    }
}
