package org.bellowscribe.annotation.style;

import java.util.List;

/**
 * The labels and signs of all marks.
 *
 * @param id short id in kebab-case
 * @param language language of its words, such as {@code de}
 * @param name one line for people about how it looks
 * @param programs kinds of programs that were seen to show all its marks; empty if it was not looked at in any
 * @param filler what stands in a lyric line at a note that has nothing to say there but must not be empty
 * @param buttons how buttons are written
 * @param leftHand how the left hand is written
 * @param words words above the staff
 * @param spoken what is said in words, for those who do not read signs
 * @param legend what the legend says about the signs
 * @param lines ids of the marks whose lines stand below the notes in this order, before those that are not named
 * @param fonts fonts, sizes and colors
 * @param practice words and counts of sheets for practice
 * @param book what stands around the tunes of a book
 */
public record Style(
        String id,
        String language,
        String name,
        String programs,
        String filler,
        ButtonLabels buttons,
        LeftHandLabels leftHand,
        WordLabels words,
        Wordings<Phrase> spoken,
        Wordings<Meaning> legend,
        List<String> lines,
        Fonts fonts,
        PracticeLabels practice,
        Wordings<BookText> book) {

    /** Copies the list. */
    public Style {
        lines = List.copyOf(lines);
    }
}
