package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders, patterns and lists: which scores they name, in which order, and where the results go. */
class InputsTest {

    @TempDir
    Path folder;

    @BeforeEach
    void book() throws IOException {
        for (String name : List.of("b.musicxml", "waltzes/a.musicxml", "waltzes/slow/c.mxl", "drafts/d.musicxml")) {
            Path file = folder.resolve("book").resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, "<score-partwise/>");
        }
    }

    private String in(String below) {
        return folder + "/book/" + below;
    }

    private Sources find(Selection selection, InputStream standardInput, String... inputs) {
        Wanted wanted = new Wanted(List.of(inputs), selection, standardInput, file -> Wanted.Beside.NOTHING);
        return Sources.find(wanted, folder.resolve("out"));
    }

    private Sources find(String... inputs) {
        return find(Selection.ALL, InputStream.nullInputStream(), inputs);
    }

    private List<String> results(Sources sources) {
        Path out = folder.resolve("out");
        return sources.found().stream()
                .map(source -> Selection.withSlashes(out.relativize(source.target())))
                .toList();
    }

    private static String onlyProblem(Sources sources) {
        assertEquals(1, sources.problems().size());
        return sources.problems().get(0).diagnostic().print("INPUT");
    }

    private static Selection selection(String include, String exclude) {
        return new Selection(patterns(include), patterns(exclude), Selection.Share.ALL);
    }

    private static List<PathPattern> patterns(String list) {
        return list.isEmpty()
                ? List.of()
                : PathPattern.split(list).stream().map(PathPattern::of).toList();
    }

    @Test
    void starsWithASlashAreAnyFoldersOrNone() {
        assertEquals(
                List.of("b.musicxml", "drafts/d.musicxml", "waltzes/a.musicxml"), results(find(in("**/*.musicxml"))));
    }

    @Test
    void oneStarStaysWithinAFolder() {
        assertEquals(List.of("b.musicxml"), results(find(in("*.musicxml"))));
        assertEquals(List.of("drafts/d.musicxml", "waltzes/a.musicxml"), results(find(in("*/?.{musicxml,mxl}"))));
    }

    @Test
    void placesBelowTheResultsBeginBehindTheFoldersThatHaveNoSigns() {
        assertEquals(List.of("slow/c.mxl"), results(find(in("waltzes/**/*.mxl"))));
    }

    @Test
    void patternThatMatchesNothingIsAProblemWithAWayOut() {
        assertTrue(onlyProblem(find(in("*.mxl"))).contains("**/ stands for all folders below"));
    }

    @Test
    void whatIsNoPatternIsSaid() {
        assertTrue(onlyProblem(find(in("[*.musicxml"))).contains("This is no pattern of file names"));
    }

    @Test
    void nameWithSignsOfAPatternIsItselfWhereItIsThere() throws IOException {
        Files.writeString(folder.resolve("book/tune [1].musicxml"), "<score-partwise/>");
        assertEquals(List.of("tune [1].musicxml"), results(find(in("tune [1].musicxml"))));
    }

    @Test
    void listNamesOneInputALineInItsOrder() throws IOException {
        Path list = folder.resolve("list.txt");
        Files.writeString(list, "# the waltzes first\n" + in("waltzes") + "\r\n\n" + in("b.musicxml") + "\n");
        List<String> results = results(find("@" + list));
        String below = Selection.withSlashes(folder.getRoot().relativize(folder)) + "/book/";
        assertEquals(
                List.of(below + "waltzes/a.musicxml", below + "waltzes/slow/c.mxl", below + "b.musicxml"), results);
    }

    @Test
    void listMayComeFromStandardInputWithZeroBytesBetween() {
        byte[] names = (in("b.musicxml") + "\0" + in("waltzes/a.musicxml") + "\0").getBytes(StandardCharsets.UTF_8);
        Sources sources = find(Selection.ALL, new ByteArrayInputStream(names), "@-");
        assertEquals(
                List.of("b.musicxml", "a.musicxml"),
                sources.found().stream().map(Source::name).toList());
    }

    @Test
    void entriesOfAListKeepTheFoldersThatTheyName() {
        assertEquals(Path.of("book", "a.xml"), InputList.place(Path.of("book/a.xml")));
        assertEquals(Path.of("other", "a.xml"), InputList.place(Path.of("../../other/a.xml")));
        assertEquals(Path.of("a.xml"), InputList.place(Path.of("book/../a.xml")));
    }

    @Test
    void listThatIsNotThereIsAProblem() {
        assertTrue(onlyProblem(find("@nowhere.txt")).contains("The list of inputs cannot be read"));
    }

    @Test
    void aListThatNamesNothingIsAProblem() throws IOException {
        Path list = Files.writeString(folder.resolve("list.txt"), "# waltzes\n\n  \n");
        assertTrue(onlyProblem(find("@" + list)).contains("The list names no score."));
        Sources piped = find(Selection.ALL, InputStream.nullInputStream(), "@-");
        assertTrue(onlyProblem(piped).contains("The list names no score."));
        assertEquals(
                List.of("Maybe the command that writes it has found none."),
                piped.problems().get(0).diagnostic().advice());
    }

    @Test
    void misspelledNameIsAnsweredWithTheNearest() {
        assertTrue(onlyProblem(find(in("waltzes/aa.musicxml"))).contains("waltzes/a.musicxml is meant"));
        assertTrue(onlyProblem(find(in("polkas/a.musicxml"))).contains("the folder above it is misspelled"));
    }

    @Test
    void excludedNamesAreThoseOfFilesAndOfFoldersOnTheWay() {
        assertEquals(
                List.of("waltzes/a.musicxml", "waltzes/slow/c.mxl"),
                results(find(selection("", "drafts,b*"), InputStream.nullInputStream(), folder + "/book")));
        assertEquals(
                List.of("b.musicxml", "drafts/d.musicxml", "waltzes/a.musicxml"),
                results(find(selection("", "waltzes/slow/"), InputStream.nullInputStream(), folder + "/book")));
    }

    @Test
    void includedAreThoseThatMatchOneOfThePatterns() {
        assertEquals(
                List.of("b.musicxml", "waltzes/slow/c.mxl"),
                results(find(selection("b.*,**/slow/*", ""), InputStream.nullInputStream(), folder + "/book")));
    }

    @Test
    void fileThatIsNamedItselfCountsWhateverIsExcluded() {
        assertEquals(
                List.of("b.musicxml"),
                results(find(selection("", "b*"), InputStream.nullInputStream(), in("b.musicxml"))));
    }

    @Test
    void sharesAreDisjointAndTogetherTheWhole() {
        Set<String> all = new TreeSet<>();
        List<String> counted = new ArrayList<>();
        for (int number = 1; number <= 3; number++) {
            Selection share = new Selection(List.of(), List.of(), new Selection.Share(number, 3));
            counted.addAll(results(find(share, InputStream.nullInputStream(), folder + "/book")));
        }
        all.addAll(counted);
        assertEquals(4, counted.size());
        assertEquals(Set.copyOf(results(find(folder + "/book"))), all);
    }

    @Test
    void shareOfAFileIsTheSameEverywhere() {
        assertTrue(new Selection.Share(1, 4).holds("waltzes/a.musicxml"));
    }

    private void link(String from, String to) throws IOException {
        Files.createDirectories(folder.resolve(from).getParent());
        try {
            Files.createSymbolicLink(folder.resolve(from), folder.resolve(to));
        } catch (UnsupportedOperationException | FileSystemException e) {
            Assumptions.abort("skipped: no links here");
        }
    }

    @Test
    void folderThatIsALinkIsFollowedWhereItIsNamed() throws IOException {
        link("library", "book");
        link("book/again", "book/waltzes");
        String library = folder + "/library";
        List<String> all = List.of("b.musicxml", "drafts/d.musicxml", "waltzes/a.musicxml", "waltzes/slow/c.mxl");
        Sources sources = find(library);
        assertEquals(all, results(sources));
        assertEquals(library + "/b.musicxml", sources.found().get(0).shown());
        assertEquals(all, results(find(library + "/**/*")));
        assertEquals(List.of("waltzes/a.musicxml"), results(find(library + "/*/a.musicxml")));
    }

    @Test
    void resultsBelowALinkAreNoInputs() throws IOException {
        link("library", "book");
        for (String name : List.of("library", "book")) {
            Wanted wanted = new Wanted(
                    List.of(folder + "/library"),
                    Selection.ALL,
                    InputStream.nullInputStream(),
                    file -> Wanted.Beside.NOTHING);
            List<Source> found =
                    Sources.find(wanted, folder.resolve(name + "/waltzes")).found();
            assertEquals(2, found.size(), name);
        }
    }

    @Test
    void linkBelowTheFolderForResultsIsNotFollowed() throws IOException {
        Files.createDirectories(folder.resolve("elsewhere"));
        link("out/waltzes", "elsewhere");
        Sources sources = find(folder + "/book");
        assertEquals(List.of("b.musicxml", "drafts/d.musicxml"), results(sources));
        assertEquals(2, sources.problems().size());
        assertTrue(sources.problems().get(0).diagnostic().text().contains("which is a link"));
    }
}
