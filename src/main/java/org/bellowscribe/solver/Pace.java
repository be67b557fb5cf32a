package org.bellowscribe.solver;

import java.util.List;
import java.util.Locale;

/** How much time an event leaves for what must happen before the next one. */
public enum Pace {
    /** Half a second or more. */
    SLOW(0.5),
    /** A quarter of a second or more. */
    MEDIUM(0.25),
    /** 0.15 seconds or more. */
    QUICK(0.15),
    /** Less. */
    VERY_QUICK(0);

    /** The names of the four, in order, as cases of a rule. */
    public static final List<String> CASES = List.of(SLOW.label(), MEDIUM.label(), QUICK.label(), VERY_QUICK.label());

    private static final List<Pace> ALL = List.of(values());

    private final double leastSeconds;
    private final String label;

    Pace(double leastSeconds) {
        this.leastSeconds = leastSeconds;
        label = name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the pace of an event that lasts some seconds. */
    public static Pace of(double seconds) {
        for (Pace pace : ALL) {
            if (seconds >= pace.leastSeconds) {
                return pace;
            }
        }
        return VERY_QUICK;
    }

    /** Returns the name in kebab-case. */
    public String label() {
        return label;
    }
}
