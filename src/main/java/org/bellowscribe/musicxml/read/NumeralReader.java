package org.bellowscribe.musicxml.read;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.audiveris.proxymusic.Numeral;
import org.audiveris.proxymusic.NumeralKey;
import org.audiveris.proxymusic.NumeralMode;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;
import org.jspecify.annotations.Nullable;

/** Roots given as a degree of the key: numerals and the older function texts such as {@code bVII} or {@code V/V}. */
final class NumeralReader {

    private static final int[] MAJOR = {0, 2, 4, 5, 7, 9, 11};
    private static final int[] MINOR = {0, 2, 3, 5, 7, 8, 10};
    private static final List<String> ROMAN = List.of("I", "II", "III", "IV", "V", "VI", "VII");
    private static final Pattern FUNCTION =
            Pattern.compile("([b#\u266d\u266f]?)(VII|VI|IV|V|III|II|I)[^IV/]*(?:/([^/]*))?", Pattern.CASE_INSENSITIVE);

    private NumeralReader() {}

    /**
     * Returns the root of numerals of which each is a degree of the key that the next one names; null if one of them has
     * no degree.
     */
    static @Nullable PitchClass root(List<Numeral> numerals, Key key) {
        PitchClass root = null;
        for (int i = numerals.size() - 1; i >= 0; i--) {
            Numeral numeral = numerals.get(i);
            if (numeral.getNumeralRoot() == null || numeral.getNumeralRoot().getValue() < 1) {
                return null;
            }
            root = root == null ? inKey(numeral, key) : root.plus(MAJOR[number(numeral) - 1] + alter(numeral));
        }
        return root;
    }

    private static PitchClass inKey(Numeral numeral, Key key) {
        NumeralKey own = numeral.getNumeralKey();
        int degree = number(numeral);
        if (own == null || own.getNumeralFifths() == null) {
            return key.tonic().plus(steps(key)[degree - 1] + alter(numeral));
        }
        NumeralMode mode = own.getNumeralMode();
        boolean major = mode == null || mode == NumeralMode.MAJOR;
        PitchClass tonic = new Key(own.getNumeralFifths().intValue(), major ? Mode.MAJOR : Mode.MINOR).tonic();
        return tonic.plus(degree(degree, mode) + alter(numeral));
    }

    private static int number(Numeral numeral) {
        return Math.min(7, numeral.getNumeralRoot().getValue());
    }

    private static int alter(Numeral numeral) {
        boolean none =
                numeral.getNumeralAlter() == null || numeral.getNumeralAlter().getValue() == null;
        return none ? 0 : numeral.getNumeralAlter().getValue().intValue();
    }

    private static int[] steps(Key key) {
        return key.mode() == Mode.MINOR ? MINOR : MAJOR;
    }

    /** Semitones of a degree; the harmonic minor sharpens the seventh, the melodic minor also the sixth. */
    private static int degree(int degree, @Nullable NumeralMode mode) {
        boolean sharp = (degree == 7 && (mode == NumeralMode.HARMONIC_MINOR || mode == NumeralMode.MELODIC_MINOR))
                || (degree == 6 && mode == NumeralMode.MELODIC_MINOR);
        boolean major = mode == null || mode == NumeralMode.MAJOR;
        return (major ? MAJOR : MINOR)[degree - 1] + (sharp ? 1 : 0);
    }

    /** Returns the root of a function text, or null if it is not understood. */
    static @Nullable PitchClass root(@Nullable String function, Key key) {
        Matcher matcher = FUNCTION.matcher(function == null ? "" : function.strip());
        if (!matcher.matches()) {
            return null;
        }
        String of = matcher.group(3);
        PitchClass tonic = of == null ? key.tonic() : root(of, key);
        if (tonic == null) {
            return null;
        }
        int degree = ROMAN.indexOf(matcher.group(2).toUpperCase(Locale.ROOT));
        int alter = switch (matcher.group(1)) {
            case "b", "B", "\u266d" -> -1;
            case "#", "\u266f" -> 1;
            default -> 0;
        };
        return tonic.plus((of == null ? steps(key) : MAJOR)[degree] + alter);
    }
}
