package org.bellowscribe.annotation.style;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The words of the library's styles in all languages. */
class StyleWordsTest {

    private static final Pattern PLACE = Pattern.compile("\\{[a-z]+\\}");

    private static final Style ENGLISH = StyleLibrary.library().of(StyleLibrary.DEFAULT_ID);

    static Stream<Style> languages() {
        return StyleLibrary.all().stream().filter(style -> !style.language().equals("en"));
    }

    private static List<String> places(Template text) {
        return PLACE.matcher(text.text())
                .results()
                .map(result -> result.group())
                .sorted()
                .toList();
    }

    @Test
    void thereAreSevenLanguagesBesideEnglish() {
        assertEquals(
                List.of("de", "fr", "it", "es", "nl", "sv", "ca"),
                languages().map(Style::language).toList());
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everythingThatIsSaidIsInThatLanguage(Style style) throws DiagnosedException {
        Set<String> elements = StyleLibrary.inherited(style.id()).stream()
                .map(line -> line.substring(0, line.indexOf(':')))
                .collect(Collectors.toSet());
        assertEquals(Set.of("style", "buttons", "left-hand", "words"), elements);
        assertTrue(StyleLibrary.inherited(style.id()).contains("words: place"), style.id());
    }

    @ParameterizedTest
    @MethodSource("languages")
    void everyTextHasThePlacesOfTheEnglishOne(Style style) {
        for (Phrase phrase : Phrase.values()) {
            assertEquals(
                    places(ENGLISH.spoken().of(phrase)), places(style.spoken().of(phrase)), phrase.id());
        }
        for (Meaning meaning : Meaning.values()) {
            assertEquals(
                    places(ENGLISH.legend().of(meaning)), places(style.legend().of(meaning)), meaning.id());
        }
        for (BookText text : BookText.values()) {
            assertEquals(places(ENGLISH.book().of(text)), places(style.book().of(text)), text.id());
        }
    }

    @ParameterizedTest
    @MethodSource("languages")
    void pushAndPullAndTheRowsAreToldApart(Style style) {
        WordLabels words = style.words();
        assertNotEquals(words.push(), words.pull());
        assertNotEquals(words.airFull(), words.airLight());
        Set<String> rows = Set.of(
                words.rows().name(1, 3), words.rows().name(2, 3), words.rows().name(3, 3));
        assertEquals(3, rows.size());
    }

    @Test
    void signsOfTheStyleApartDifferWithoutPunctuationAndCapitals() {
        Style apart = StyleLibrary.library().of("apart");
        assertEquals(signs(apart).size(), heard(apart).size(), heard(apart).toString());
        assertTrue(heard(ENGLISH).size() < signs(ENGLISH).size());
    }

    private static Set<String> signs(Style style) {
        ButtonLabels buttons = style.buttons();
        Set<String> signs = new TreeSet<>();
        for (String button : List.of("3", buttons.otherRow(0, "3"), buttons.otherRow(1, "3"))) {
            for (String held : List.of(button, buttons.held().with("button", button))) {
                signs.add(buttons.push().with("buttons", held));
                signs.add(buttons.pull().with("buttons", held));
            }
        }
        PitchClass g = PitchClass.parse("G");
        signs.add(style.leftHand().label(LeftHandSound.bass(g)));
        signs.add(style.leftHand().label(LeftHandSound.chord(g, Third.MAJOR)));
        signs.add(style.leftHand().label(LeftHandSound.chord(g, Third.MINOR)));
        return signs;
    }

    private static Set<String> heard(Style style) {
        return signs(style).stream()
                .map(sign -> sign.replaceAll("[^A-Za-z0-9]", "").toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(chars = {'a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j'})
    void noLetterThatBrailleReadsAsADigitStandsBesideANumber(char digit) {
        for (String sign : signs(StyleLibrary.library().of("apart"))) {
            boolean number = sign.contains("3");
            assertTrue(!number || sign.indexOf(digit) < 0, sign);
        }
    }

    @Test
    void whatAStyleLeavesInEnglishIsListed() throws DiagnosedException {
        assertEquals(
                List.of(
                        "buttons: between, lines, numbers, push",
                        "left-hand: and-so-on, bass, chord, minor, together",
                        "words: place"),
                StyleLibrary.inherited("samples/styles/willow-lane.xml"));
        assertEquals(List.of(), StyleLibrary.inherited(StyleLibrary.DEFAULT_ID));
    }
}
