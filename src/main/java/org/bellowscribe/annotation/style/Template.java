package org.bellowscribe.annotation.style;

/**
 * A text with places for values, such as {@code hand on {button}}.
 *
 * @param text the text; a place is a name in braces
 */
public record Template(String text) {

    /** Returns the text with a value in every place of that name. */
    public String with(String name, String value) {
        return text.replace("{" + name + "}", value);
    }

    /** Returns the text with a number in every place of that name. */
    public String with(String name, int value) {
        return with(name, String.valueOf(value));
    }

    @Override
    public String toString() {
        return text;
    }
}
