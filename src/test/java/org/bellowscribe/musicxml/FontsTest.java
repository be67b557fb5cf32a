package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.style.Fonts;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class FontsTest {

    private static final Fonts FONTS = new Fonts(new TreeMap<>(Map.of(
            Fonts.WORDS,
            font("font-size", "9", "color", "#444444"),
            Fonts.FINGERS,
            font("font-weight", "bold"),
            "buttons",
            font("font-family", "A \"B\""))));

    private static SortedMap<String, String> font(String... pairs) {
        SortedMap<String, String> font = new TreeMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            font.put(pairs[i], pairs[i + 1]);
        }
        return font;
    }

    private static ScoreDocument score() throws DiagnosedException {
        return TinyScore.decode(
                TinyScore.of("<note><pitch><step>G</step><octave>4</octave></pitch><duration>1</duration></note>"));
    }

    @Test
    void eachSortOfMarkHasItsAttributes() throws DiagnosedException {
        String marked = score().inFonts(FONTS, "·")
                .withMarks(List.of(
                        new Annotation.Words(0, true, "air"),
                        new Annotation.Finger(0, 2),
                        new Annotation.Syllable(0, 0, "buttons", "5"),
                        new Annotation.Syllable(0, 1, "left-hand", "G")))
                .text();
        assertTrue(marked.contains("<words color=\"#444444\" font-size=\"9\">air</words>"), marked);
        assertTrue(marked.contains("<fingering font-weight=\"bold\">2</fingering>"), marked);
        assertTrue(marked.contains("<text font-family=\"A &quot;B&quot;\">5</text>"), marked);
        assertTrue(marked.contains("<text>G</text>"), marked);
    }

    @Test
    void marksWithFontsComeOutWithoutATrace() throws DiagnosedException {
        ScoreDocument score = score();
        ScoreDocument marked = score.inFonts(FONTS, "·").withMarks(List.of(new Annotation.Words(0, true, "air")));
        assertEquals(score.text(), marked.withoutMarks().text());
    }
}
