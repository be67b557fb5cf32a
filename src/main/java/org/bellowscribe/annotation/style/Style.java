package org.bellowscribe.annotation.style;

/**
 * The labels and signs of all marks.
 *
 * @param id short id in kebab-case
 * @param name one line for people about how it looks
 * @param filler what stands in a lyric line at a note that has nothing to say there but must not be empty
 * @param buttons how buttons are written
 * @param leftHand how the left hand is written
 * @param words words above the staff
 * @param spoken what is said in words, for those who do not read signs
 * @param practice words and counts of sheets for practice
 */
public record Style(
        String id,
        String name,
        String filler,
        ButtonLabels buttons,
        LeftHandLabels leftHand,
        WordLabels words,
        Phrases spoken,
        PracticeLabels practice) {}
