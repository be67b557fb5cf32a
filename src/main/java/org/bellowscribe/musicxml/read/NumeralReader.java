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
    private static final Pattern FUNCTION = Pattern.compile("([b#\u266d\u266f]?)(VII|VI|IV|V|III|II|I)[^/]*(?:/(.*))?");

    private NumeralReader() {}

    /** Returns the root of a numeral, or null if it has no degree. */
    static @Nullable PitchClass root(Numeral numeral, Key key) {
        if (numeral.getNumeralRoot() == null || numeral.getNumeralRoot().getValue() < 1) {
            return null;
        }
        int alter =
                numeral.getNumeralAlter() == null || numeral.getNumeralAlter().getValue() == null
                        ? 0
                        : numeral.getNumeralAlter().getValue().intValue();
        int degree = numeral.getNumeralRoot().getValue();
        NumeralKey own = numeral.getNumeralKey();
        if (own == null || own.getNumeralFifths() == null) {
            boolean minor = key.mode() == Mode.MINOR;
            return key.tonic().plus((minor ? MINOR : MAJOR)[degree - 1] + alter);
        }
        boolean major = own.getNumeralMode() == null || own.getNumeralMode() == NumeralMode.MAJOR;
        PitchClass tonic = new Key(own.getNumeralFifths().intValue(), major ? Mode.MAJOR : Mode.MINOR).tonic();
        return tonic.plus(degree(degree, own.getNumeralMode()) + alter);
    }

    /** Semitones of a degree; the harmonic minor sharpens the seventh, the melodic minor also the sixth. */
    private static int degree(int degree, @Nullable NumeralMode mode) {
        boolean sharp = degree == 7 && (mode == NumeralMode.HARMONIC_MINOR || mode == NumeralMode.MELODIC_MINOR)
                || degree == 6 && mode == NumeralMode.MELODIC_MINOR;
        boolean major = mode == null || mode == NumeralMode.MAJOR;
        return (major ? MAJOR : MINOR)[degree - 1] + (sharp ? 1 : 0);
    }

    /** Returns the root of a function text, or null if it is not understood. */
    static @Nullable PitchClass root(@Nullable String function, Key key) {
        Matcher matcher = FUNCTION.matcher(
                function == null
                        ? ""
                        : function.strip().toUpperCase(Locale.ROOT).replace('B', 'b'));
        if (!matcher.matches()) {
            return null;
        }
        String of = matcher.group(3);
        PitchClass tonic = of == null ? key.tonic() : root(of, key);
        if (tonic == null) {
            return null;
        }
        boolean minor = of == null && key.mode() == Mode.MINOR;
        int degree = ROMAN.indexOf(matcher.group(2));
        String sign = matcher.group(1);
        int alter = sign.isEmpty() ? 0 : "b\u266d".contains(sign) ? -1 : 1;
        return tonic.plus((minor ? MINOR : MAJOR)[degree] + alter);
    }
}
