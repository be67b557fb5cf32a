package org.bellowscribe.annotation.style;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How each thing of a sort is worded.
 *
 * @param <K> the sort
 * @param keys the sort
 * @param texts a text for every thing of it
 */
public record Wordings<K extends Enum<K> & Wording>(Class<K> keys, Map<K, Template> texts) {

    /**
     * Checks that nothing is missing.
     *
     * @throws IllegalArgumentException naming what has no wording
     */
    public Wordings {
        Map<K, Template> all = new EnumMap<>(keys);
        all.putAll(texts);
        for (K key : keys.getEnumConstants()) {
            if (!all.containsKey(key)) {
                throw new IllegalArgumentException("The text (%s) must have a wording.".formatted(key.id()));
            }
        }
        texts = Collections.unmodifiableMap(all);
    }

    /** Returns the wording of a thing. */
    public Template of(K key) {
        Template text = texts.get(key);
        if (text == null) {
            throw new IllegalStateException("The text (%s) must have a wording.".formatted(key.id()));
        }
        return text;
    }

    /** Returns a text without places. */
    public String say(K key) {
        return of(key).text();
    }

    /** Returns a text with a value in its one place. */
    public String say(K key, String place, Object value) {
        return of(key).with(place, String.valueOf(value));
    }

    /** Returns a text with values in its places. */
    public String say(K key, Map<String, ?> values) {
        Template text = of(key);
        for (Map.Entry<String, ?> value : values.entrySet()) {
            text = new Template(text.with(value.getKey(), String.valueOf(value.getValue())));
        }
        return text.text();
    }
}
