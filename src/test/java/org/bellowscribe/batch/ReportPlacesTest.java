package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReportPlacesTest {

    private static List<String> places(String... files) {
        List<Source> sources = Stream.of(files)
                .map(Path::of)
                .map(file -> new Source(file, file.toString(), file))
                .toList();
        Map<Source, String> places = ReportPlaces.of(sources);
        return sources.stream().map(places::get).toList();
    }

    @Test
    void pagesLieToEachOtherAsTheirFilesDo() {
        assertEquals(List.of("a", "jigs/b"), places("book/a.xml", "book/jigs/b.xml"));
    }

    @Test
    void theFolderThatHoldsAllIsNotRepeated() {
        assertEquals(List.of("a"), places("deep/down/a.musicxml"));
    }

    @Test
    void filesThatDifferInTheEndingAloneKeepIt() {
        assertEquals(List.of("a", "a.mxl"), places("a.xml", "a.mxl"));
    }

    @Test
    void namesThatDifferInCapitalsAloneAreToldApart() {
        assertEquals(List.of("a", "A.xml", "A.XML-2"), places("a.mxl", "A.xml", "A.XML"));
    }
}
