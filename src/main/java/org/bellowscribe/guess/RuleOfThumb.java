package org.bellowscribe.guess;

/**
 * What a player of some weeks would press if nobody told: the first rule that speaks of a note decides. Common practice, no
 * source.
 */
public enum RuleOfThumb {
    /** The button and direction that gave the same note the last time. */
    SAME_AS_LAST("the same button as the last time"),
    /** A note of the tonic chord is pushed on the home row. */
    PUSH_ON_TONIC("push on the tonic chord"),
    /** The button of the home row that is nearest to the one before; the bellows turn only if they must. */
    NEAREST_AT_HOME("the nearest button on the home row");

    private final String words;

    RuleOfThumb(String words) {
        this.words = words;
    }

    /** Returns it in words. */
    public String words() {
        return words;
    }
}
