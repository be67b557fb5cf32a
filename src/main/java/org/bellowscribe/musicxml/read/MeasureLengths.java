package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;

/**
 * How long each measure of the melody is: what its part holds, or up to a full measure if another part holds more. Some
 * exporters write measures that hold nothing but a bar line; their length is 0.
 */
final class MeasureLengths {

    private final List<PartContent> parts;
    private final int melody;
    private final List<TimeSignature> times;

    MeasureLengths(List<PartContent> parts, int melody, List<TimeSignature> times) {
        this.parts = parts;
        this.melody = melody;
        this.times = times;
    }

    List<Fraction> lengths() {
        List<Fraction> lengths = new ArrayList<>();
        for (int i = 0; i < times.size(); i++) {
            lengths.add(length(i));
        }
        return lengths;
    }

    private Fraction length(int measure) {
        Fraction own = parts.get(melody).measures().get(measure).length();
        Fraction full = times.get(measure).measureLength();
        if (own.compareTo(full) >= 0) {
            return own;
        }
        Fraction longest = own;
        for (PartContent part : parts) {
            if (measure < part.measures().size()) {
                Fraction other = part.measures().get(measure).length();
                longest = longest.compareTo(other) < 0 ? other : longest;
            }
        }
        return Fraction.min(longest, full);
    }
}
