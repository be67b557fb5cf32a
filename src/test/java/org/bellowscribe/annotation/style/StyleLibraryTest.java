package org.bellowscribe.annotation.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StyleLibraryTest {

    @TempDir
    @SuppressWarnings("NullAway.Init")
    private Path folder;

    @Test
    void theDefaultStyleComesFirst() {
        assertEquals(
                List.of(
                        "parentheses",
                        "two-lines",
                        "rows",
                        "compact",
                        "beginner",
                        "fingers",
                        "apart",
                        "german",
                        "french",
                        "italian",
                        "spanish",
                        "dutch",
                        "swedish",
                        "catalan"),
                StyleLibrary.all().stream().map(Style::id).toList());
        assertEquals("parentheses", StyleLibrary.DEFAULT_ID);
    }

    @Test
    void aStyleIsFoundByItsId() throws DiagnosedException {
        assertTrue(StyleLibrary.find("two-lines").buttons().twoLines());
        assertFalse(StyleLibrary.find("parentheses").buttons().twoLines());
    }

    @Test
    void aHouseChangesAllWordsIntoItsLanguage() throws DiagnosedException, IOException {
        Style style = find("""
                <style id="haus" name="Deutsch" filler=".">
                  <left-hand minor="mi"><note pitch="B" name="H"/><note pitch="Bb" name="B"/></left-hand>
                  <words push="drücken" pull="ziehen" air-light="wenig Luft" air-full="Luft" air-before="vorher Luft"
                         direction-with-air="{direction} mit {air}" hand="Hand auf {button}" left-hand="links {sounds}" sounding="klingt in {key} ({semitones})" opening="{part} offen"
                         closed="zu" fully-open="ganz offen" between="; "/>
                  <rows outer="Außenreihe" middle="Mittelreihe" inner="Innenreihe" other="Reihe {row}"/>
                </style>
                """);
        assertEquals(
                "ziehen mit Luft",
                style.words()
                        .directionAndAir(style.words().pull(), style.words().airFull()));
        assertEquals("Hand auf 4", style.words().hand().with("button", 4));
        assertEquals("links H", style.words().leftHand().with("sounds", "H"));
        assertEquals("Innenreihe", style.words().rows().name(2, 2));
        assertEquals("Reihe 2", style.words().rows().name(2, 4));
        LeftHandSound chord = LeftHandSound.chord(PitchClass.parse("B"), Third.MINOR);
        assertEquals("hmi", style.leftHand().label(chord));
        assertEquals("B", style.leftHand().label(LeftHandSound.bass(PitchClass.parse("Bb"))));
    }

    @Test
    void whatAFileDoesNotSayIsAsInTheDefaultStyle() throws DiagnosedException, IOException {
        Style style = find("<style id='mine' name='Mine'><buttons held='+{button}'/></style>");
        Style plain = StyleLibrary.find("parentheses");
        assertEquals("+5", style.buttons().held().with("button", 5));
        assertEquals(plain.buttons().pull(), style.buttons().pull());
        assertEquals(plain.buttons().otherRows(), style.buttons().otherRows());
        assertEquals(plain.words(), style.words());
    }

    @Test
    void aFileMayBeBasedOnAnotherStyle() throws DiagnosedException, IOException {
        Style style = find("<style id='mine' name='Mine' base='two-lines'><words pull='draw'/></style>");
        assertTrue(style.buttons().twoLines());
        assertEquals("draw", style.words().pull());
        assertEquals("push", style.words().push());
    }

    @Test
    void signsOfRowsReplaceAllThoseOfTheBase() throws DiagnosedException, IOException {
        Style style = find("<style id='mine' name='Mine'><buttons><other-row label='{button}.'/></buttons></style>");
        assertEquals("7.", style.buttons().otherRow(0, "7"));
        assertEquals("7..", style.buttons().otherRow(1, "7"));
    }

    @Test
    void aSignThatProgramsDoNotShowIsRefusedWithItsPlace() throws IOException {
        assertEquals(
                List.of("style.xml: line 2, column 47: error [bad-definition] The value \"~{button}\" of held in"
                        + " <buttons> is not allowed.\n  Maybe write {button} with up to three letters or safe signs"
                        + " before and after it, such as {button}′."),
                problems("<style id='mine' name='Mine'>\n  <buttons held='~{button}' push='{buttons}'/></style>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"_", "~", "*", "-", "$", "Ø", "†", "①", "\u00a0", "→", "\ue8cb", "5"})
    void signsThatSomeProgramChangesOrThatMisleadAreRefused(String sign) throws IOException {
        List<String> problems =
                problems("<style id='mine' name='Mine'><buttons pull='{buttons}%s'/></style>".formatted(sign));
        assertTrue(problems.get(0).contains(" of pull in <buttons> is not allowed."), problems.get(0));
    }

    @Test
    void wordsMustNotUseTheGlyphsOfOneFont() throws IOException {
        assertTrue(problems("<style id='mine' name='Mine'><words push='\ue8cb'/></style>")
                .get(0)
                .contains(" of push in <words> is not allowed."));
    }

    @Test
    void wordsDoNotEndInTheSignThatFixesAMark() throws IOException {
        assertEquals(
                List.of(
                        "style.xml: line 1, column 54: error [bad-definition] The value \"air!\" of air-full in <words> is"
                                + " not allowed.\n  Maybe write 1 to 24 characters without braces, such as air; the last one is no"
                                + " !, which fixes a mark."),
                problems("<style id='mine' name='Mine'><words air-full='air!'/></style>"));
    }

    @Test
    void aLabelWithoutItsPlaceIsRefused() throws IOException {
        assertEquals(
                List.of("style.xml: line 1, column 59: error [bad-definition] The value \"hand\" of hand in <words> is"
                        + " not allowed.\n  Maybe write {button} with up to 16 characters before and after, such as"
                        + " hand on {button}."),
                problems("<style id='mine' name='Mine'><words hand='hand' push='p'/></style>"));
    }

    @Test
    void anUnknownBaseNamesTheNearest() throws IOException {
        assertEquals(
                List.of("style.xml: line 1, column 51: error [unknown-name] The library has no style two-line.\n"
                        + "  Maybe two-lines.\n  The command styles list shows all."),
                problems("<style id='mine' name='Mine' base='two-line'     ></style>"));
    }

    @Test
    void anUnknownIdNamesTheNearest() {
        assertEquals(
                List.of("style.xml: error [unknown-name] The library has no style parenthesis.\n"
                        + "  Maybe parentheses.\n  The command styles list shows all."),
                print(assertThrows(DiagnosedException.class, () -> StyleLibrary.find("parenthesis"))));
    }

    @Test
    void aMissingFileIsSaidToBeMissing() {
        Path file = folder.resolve("none.xml");
        List<String> problems = print(assertThrows(DiagnosedException.class, () -> StyleLibrary.find(file.toString())));
        assertTrue(
                problems.get(0)
                        .startsWith("style.xml: error [unreadable] The style file cannot be read"
                                + " (there is no such file or folder)."),
                problems.get(0));
    }

    private Style find(String text) throws DiagnosedException, IOException {
        Path file = folder.resolve("style.xml");
        Files.writeString(file, text);
        return StyleLibrary.find(file.toString());
    }

    private List<String> problems(String text) throws IOException {
        Path file = folder.resolve("style.xml");
        Files.writeString(file, text);
        return print(assertThrows(DiagnosedException.class, () -> StyleLibrary.find(file.toString())));
    }

    private static List<String> print(DiagnosedException e) {
        return e.diagnostics().stream().map(remark -> remark.print("style.xml")).toList();
    }
}
