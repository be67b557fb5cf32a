package org.bellowscribe.score;

import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The usual tempo of a dance, for scores that state none. A dance is known by a word of the title or else by the time
 * signature.
 *
 * @param name the dance
 * @param quartersPerMinute usual tempo in the time signature asked for
 * @param fromTitle true if a word of the title named the dance, false if only the time signature did
 */
public record DanceTempo(String name, double quartersPerMinute, boolean fromTitle) {

    /** A tempo in measures a minute, which holds however the dance is written, or else in felt pulses a minute. */
    private record Usual(String name, Pattern words, double measures, double pulses) {

        static Usual measures(String name, String words, double measures) {
            return new Usual(name, pattern(words), measures, 0);
        }

        static Usual pulses(String name, String words, double pulses) {
            return new Usual(name, pattern(words), 0, pulses);
        }

        double quarters(TimeSignature time) {
            return measures > 0
                    ? measures * time.measureLength().toDouble()
                    : pulses * time.pulse().toDouble();
        }

        private static Pattern pattern(String words) {
            return Pattern.compile("\\b(" + words + ")\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        }
    }

    /** The first that fits counts: a slip jig is also a jig. */
    private static final List<Usual> DANCES = List.of(
            // From memory: the pulse of a jig, a little slower.
            Usual.pulses("slip jig", "slip[ -]?jig|hop[ -]?jig", 108),
            Usual.pulses("slide", "slide", 120),
            // "The Sandman", Mudcat message 2438330, 2008: ceilidh jigs 108 to 120 dotted quarters.
            Usual.pulses("jig", "jigs?|gigue|giga", 114),
            // Nottingham swing, 143 to 150 quarters (same message); Irish set dances are faster.
            Usual.measures("hornpipe", "hornpipes?", 37),
            // From memory: 30 measures of 4/4.
            Usual.measures("strathspey", "strathspeys?", 30),
            // Ceilidh reels 100 to 106 half notes (same message).
            Usual.measures("reel", "reels?|breakdown|rant", 52),
            // australianfolkmusic.com.au: 52 measures.
            Usual.measures("polka mazurka", "polka[ -]mazurka|varsovienne|varsoviana", 52),
            // clarinette.net, measured from recordings: 100 to 120 quarters.
            Usual.pulses("mazurka", "mazurkas?|mazourka", 110),
            // English ceilidh polkas 108 to 120 quarters (Mudcat, as above); Irish ones are faster.
            Usual.pulses("polka", "polkas?|polca", 116),
            // australianfolkmusic.com.au: 48 to 52 measures.
            Usual.measures("waltz", "waltz(es)?|walzer|valse|vals|valzer|wals", 50),
            // Same source: 28 to 32 measures of 4/4; clarinette.net 100.
            Usual.measures("schottische", "schottis(che|ch|h)|scottische|barn ?dance", 28),
            // Mudcat, as above: 117 to 123.
            Usual.pulses("march", "march|marche|marsch|marcia|quick ?step|two[ -]step|grand march", 120),
            // clarinette.net: 132 in two; from memory 55 measures and more in three.
            Usual.measures("bourr\u00e9e", "bourr[e\u00e9]e", 60),
            // From memory.
            Usual.pulses("air", "airs?|lament|aria|lullaby|slow|adagio", 72));

    /**
     * Returns the usual tempo.
     *
     * @param words title and other words at the head of the score; may be empty
     * @param time time signature of the tune
     */
    public static DanceTempo of(String words, TimeSignature time) {
        Usual named = named(words);
        if (named != null) {
            return new DanceTempo(named.name(), named.quarters(time), true);
        }
        return byTime(time);
    }

    private static @Nullable Usual named(String words) {
        for (Usual usual : DANCES) {
            if (usual.words().matcher(words).find()) {
                return usual;
            }
        }
        return null;
    }

    // The same sources as above; 4/4 may be a song or a reel: a walking pulse suits both and is hard on the air.
    private static DanceTempo byTime(TimeSignature time) {
        String name = switch (time.toString()) {
            case "6/8" -> "jig";
            case "9/8" -> "slip jig";
            case "12/8" -> "slide";
            case "3/4", "3/8" -> "waltz";
            case "2/4" -> "polka";
            case "2/2" -> "reel";
            default -> "march";
        };
        Usual usual = named(name);
        return new DanceTempo(name, usual == null ? 120 : usual.quarters(time), false);
    }
}
