package org.bellowscribe.annotation.style;

import org.bellowscribe.solver.AirUse;

/**
 * Words and counts of sheets for practice.
 *
 * @param tempo a tempo that is not that of the tune; place {@code {percent}}
 * @param estimatedTempo such a tempo that comes from an estimate; place {@code {percent}}
 * @param airHeld the air button is held down all the time
 * @param airOn the air button, pressed on a count; place {@code {count}}
 * @param airLightlyOn the air button, pressed lightly on a count; place {@code {count}}
 * @param alsoFor for which box a line of numbers is; places {@code {line}} and {@code {box}}
 * @param anyStart for which boxes fingers without numbers are; place {@code {keys}}
 * @param exercise what stands above the first note of an exercise; places {@code {number}} and {@code {measure}}
 * @param blocked title of exercises each of which is played several times before the next
 * @param mixed title of exercises that are played in turn
 * @param half what is counted halfway between two beats, such as {@code &}
 * @param quarter what is counted a quarter of the way
 * @param lastQuarter what is counted three quarters of the way
 * @param third what is counted a third of the way
 * @param lastThird what is counted two thirds of the way
 */
public record PracticeLabels(
        Template tempo,
        Template estimatedTempo,
        String airHeld,
        Template airOn,
        Template airLightlyOn,
        Template alsoFor,
        Template anyStart,
        Template exercise,
        String blocked,
        String mixed,
        String half,
        String quarter,
        String lastQuarter,
        String third,
        String lastThird) {

    /** Returns the words that name the box of a line of numbers, counted from 1. */
    public String alsoFor(int line, String box) {
        return new Template(alsoFor.with("line", line)).with("box", box);
    }

    /**
     * Returns the words for the air button.
     *
     * @param use how far it is pressed, not {@code NONE}
     * @param count the count on which it is pressed
     */
    public String air(AirUse use, String count) {
        return onCount(use).with("count", count);
    }

    /** Returns the form of these words: with a place {@code {count}}. */
    public Template onCount(AirUse use) {
        return use == AirUse.LIGHT ? airLightlyOn : airOn;
    }
}
