package org.bellowscribe.instrument;

import java.util.List;
import org.bellowscribe.theory.Pitch;

/**
 * How much air the reeds take, in RU (1 RU: one A4 reed at mezzo-forte). A reed of frequency f weighs
 * {@code clamp((reference / f) ^ exponent, least, most)}. An engineering estimate; every constant belongs to the
 * instrument and may be changed there.
 *
 * @param referenceFrequency frequency of the reed that weighs 1, in hertz
 * @param exponent how fast the weight falls with the frequency
 * @param least smallest weight of a reed
 * @param most largest weight of a reed
 * @param voices for each voice its octave against the written pitch: 0 unison, -1 an octave lower, 1 an octave higher
 * @param bassFlow air of a bass button, in RU
 * @param chordFlow air of a chord button with its third, in RU
 * @param chordWithoutThirdFlow air of a chord button without third, in RU
 * @param loudnessSlack share by which a player's loudness may move the flow of any note, 0 or more
 */
public record AirModel(
        double referenceFrequency,
        double exponent,
        double least,
        double most,
        List<Integer> voices,
        double bassFlow,
        double chordFlow,
        double chordWithoutThirdFlow,
        double loudnessSlack) {

    /** Copies the voices. */
    public AirModel {
        voices = List.copyOf(voices);
    }

    /** Returns the flow of a melody button that sounds a pitch, in RU. */
    public double flow(Pitch pitch) {
        double sum = 0;
        for (int octave : voices) {
            double frequency = pitch.frequency() * StrictMath.pow(2, octave);
            sum += Math.max(least, Math.min(most, StrictMath.pow(referenceFrequency / frequency, exponent)));
        }
        return sum;
    }

    /** Returns the flow of a left-hand button that sounds, in RU. */
    public double flow(LeftHandSound sound) {
        if (sound.kind() == LeftHandKind.BASS) {
            return bassFlow;
        }
        return sound.third() == Third.NONE ? chordWithoutThirdFlow : chordFlow;
    }
}
