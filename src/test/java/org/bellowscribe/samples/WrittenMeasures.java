package org.bellowscribe.samples;

import java.util.List;
import org.bellowscribe.theory.Fraction;
import org.w3c.dom.Element;

/**
 * The written measures of a part whose divisions and time signature never change.
 *
 * @param full the length that the time signature asks for
 * @param lengths the sum of the notes and rests of each measure; a note group counts once
 */
record WrittenMeasures(Fraction full, List<Fraction> lengths) {

    /** Adds up a {@code <part>}. */
    static WrittenMeasures of(Element part) {
        int divisions = number(part, "divisions");
        Fraction full = Fraction.of(4L * number(part, "beats"), number(part, "beat-type"));
        List<Fraction> lengths = Sample.find(part, "measure").stream()
                .map(measure -> Fraction.of(duration(measure), divisions))
                .toList();
        return new WrittenMeasures(full, lengths);
    }

    private static int duration(Element measure) {
        return Sample.find(measure, "note").stream()
                .filter(note -> Sample.find(note, "chord").isEmpty())
                .filter(note -> Sample.find(note, "grace").isEmpty())
                .mapToInt(note -> number(note, "duration"))
                .sum();
    }

    private static int number(Element below, String name) {
        return Integer.parseInt(Sample.find(below, name).get(0).getTextContent());
    }
}
