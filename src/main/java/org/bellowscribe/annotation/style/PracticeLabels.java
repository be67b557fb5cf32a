package org.bellowscribe.annotation.style;

import org.bellowscribe.solver.AirUse;

/**
 * Words and counts of sheets for practice.
 *
 * @param tempo a tempo that is not that of the tune; place {@code {percent}}
 * @param airHeld the air button is held down all the time
 * @param airOn the air button, pressed on a count; place {@code {count}}
 * @param airLightlyOn the air button, pressed lightly on a count; place {@code {count}}
 * @param half what is counted halfway between two beats, such as {@code &}
 * @param quarter what is counted a quarter of the way
 * @param lastQuarter what is counted three quarters of the way
 * @param third what is counted a third of the way
 * @param lastThird what is counted two thirds of the way
 */
public record PracticeLabels(
        Template tempo,
        String airHeld,
        Template airOn,
        Template airLightlyOn,
        String half,
        String quarter,
        String lastQuarter,
        String third,
        String lastThird) {

    /**
     * Returns the words for the air button.
     *
     * @param use how far it is pressed, not {@code NONE}
     * @param count the count on which it is pressed
     */
    public String air(AirUse use, String count) {
        return (use == AirUse.LIGHT ? airLightlyOn : airOn).with("count", count);
    }
}
