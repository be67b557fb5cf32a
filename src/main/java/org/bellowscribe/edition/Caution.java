package org.bellowscribe.edition;

import java.util.List;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Wordings;

/**
 * General advice so that playing does not hurt; it takes nobody's place who can look at the player.
 *
 * @param text one or two sentences
 * @param source where it is published, or that it is common practice without a source
 */
public record Caution(String text, String source) {

    private static final String ERGONOMICS = "Artist- och musikerhälsan, \"3.15 Accordion ergonomics\"";

    /** Returns all cautions, in the order in which to print them. */
    public static List<Caution> all(Wordings<BookText> words) {
        String rest = "; " + words.say(BookText.ELSE_NO_SOURCE);
        return List.of(
                new Caution(
                        words.say(BookText.CAUTION_FORCE),
                        "germanconcertina.blogspot.com, \"Thumb air valve\", 2014" + rest),
                new Caution(words.say(BookText.CAUTION_FAR), "Wikibooks, \"Accordion/Operating the Bellows\""),
                new Caution(
                        words.say(BookText.CAUTION_BREAKS), "Cruder, thesis, Queen Margaret University, 2022" + rest),
                new Caution(words.say(BookText.CAUTION_SEAT), ERGONOMICS),
                new Caution(words.say(BookText.CAUTION_STRAPS), ERGONOMICS + rest),
                new Caution(words.say(BookText.CAUTION_PAIN), words.say(BookText.NO_SOURCE)));
    }
}
