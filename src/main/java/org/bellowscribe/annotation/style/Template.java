package org.bellowscribe.annotation.style;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A text with places for values, such as {@code hand on {button}}.
 *
 * @param text the text; a place is a name in braces
 */
public record Template(String text) {

    private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)\\}");

    /** Returns the text with a value in every place of that name. */
    public String with(String name, String value) {
        return text.replace("{" + name + "}", value);
    }

    /** Returns the text with a number in every place of that name. */
    public String with(String name, int value) {
        return with(name, String.valueOf(value));
    }

    /**
     * Reads a text that was written with this template.
     *
     * @return the values by the names of their places; null if the text was not
     */
    public @Nullable SortedMap<String, String> read(String written) {
        SortedMap<String, String> values = new TreeMap<>();
        List<String> names = new ArrayList<>();
        StringBuilder pattern = new StringBuilder();
        Matcher places = PLACE.matcher(text);
        int done = 0;
        while (places.find()) {
            pattern.append(Pattern.quote(text.substring(done, places.start()))).append("(.+?)");
            names.add(places.group(1));
            done = places.end();
        }
        Matcher matcher =
                Pattern.compile(pattern + Pattern.quote(text.substring(done))).matcher(written);
        if (!matcher.matches()) {
            return null;
        }
        for (int i = 0; i < names.size(); i++) {
            values.put(names.get(i), matcher.group(i + 1));
        }
        return values;
    }

    @Override
    public String toString() {
        return text;
    }
}
