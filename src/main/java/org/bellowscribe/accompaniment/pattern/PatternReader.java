package org.bellowscribe.accompaniment.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.accompaniment.ChordTone;
import org.bellowscribe.accompaniment.Pattern;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** Makes a pattern of a file that its schema has accepted. */
final class PatternReader {

    private PatternReader() {}

    static Pattern pattern(DefinitionElement root) {
        List<Pattern.Beat> strokes = new ArrayList<>();
        for (DefinitionElement stroke : root.children("stroke")) {
            strokes.add(new Pattern.Beat(
                    onset(stroke.required("beat")),
                    Fraction.parse(stroke.required("length")),
                    LeftHandKind.valueOf(stroke.required("sound").toUpperCase(Locale.ROOT)),
                    ChordTone.valueOf(stroke.required("note").toUpperCase(Locale.ROOT))));
        }
        strokes.sort(Comparator.comparing(Pattern.Beat::onset));
        DefinitionElement summary = root.child("summary");
        int beats = root.attribute("beats") == null ? 0 : root.number("beats");
        return new Pattern(
                root.required("id"), summary == null ? "" : summary.text(), use(root.child("use")), beats, strokes);
    }

    private static Pattern.@Nullable Use use(@Nullable DefinitionElement use) {
        if (use == null) {
            return null;
        }
        return new Pattern.Use(use.number("beats"), use.attribute("from-tempo") == null ? 0 : use.number("from-tempo"));
    }

    // Such as 1+2/3, counted from 1.
    private static Fraction onset(String beat) {
        int plus = beat.indexOf('+');
        Fraction whole = Fraction.parse(plus < 0 ? beat : beat.substring(0, plus));
        Fraction rest = plus < 0 ? Fraction.ZERO : Fraction.parse(beat.substring(plus + 1));
        return whole.minus(Fraction.of(1, 1)).plus(rest);
    }
}
