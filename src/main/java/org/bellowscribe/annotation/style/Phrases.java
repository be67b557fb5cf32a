package org.bellowscribe.annotation.style;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How each phrase is worded.
 *
 * @param wordings a wording for every phrase
 */
public record Phrases(Map<Phrase, Template> wordings) {

    /**
     * Checks that nothing is missing.
     *
     * @throws IllegalArgumentException naming the phrase that has no wording
     */
    public Phrases {
        Map<Phrase, Template> all = new EnumMap<>(wordings);
        for (Phrase phrase : Phrase.values()) {
            if (!all.containsKey(phrase)) {
                throw new IllegalArgumentException("The phrase (%s) must have a wording.".formatted(phrase.id()));
            }
        }
        wordings = Collections.unmodifiableMap(all);
    }

    /** Returns the wording of a phrase. */
    public Template of(Phrase phrase) {
        Template wording = wordings.get(phrase);
        if (wording == null) {
            throw new IllegalStateException("The phrase (%s) must have a wording.".formatted(phrase.id()));
        }
        return wording;
    }

    /** Returns a phrase without places. */
    public String say(Phrase phrase) {
        return of(phrase).text();
    }

    /** Returns a phrase with a value in its one place. */
    public String say(Phrase phrase, String place, Object value) {
        return of(phrase).with(place, String.valueOf(value));
    }

    /** Returns a phrase with values in its places. */
    public String say(Phrase phrase, Map<String, ?> values) {
        Template wording = of(phrase);
        for (Map.Entry<String, ?> value : values.entrySet()) {
            wording = new Template(wording.with(value.getKey(), String.valueOf(value.getValue())));
        }
        return wording.text();
    }
}
