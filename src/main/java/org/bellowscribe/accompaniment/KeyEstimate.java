package org.bellowscribe.accompaniment;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;

/**
 * The key in which the harmony of a tune is sought: the signature is believed, its mode is weighed against the melody by
 * {@link KeyProfile}, because many scores call every signature major.
 */
final class KeyEstimate {

    /** The modes of folk tunes (common practice, no source). */
    private static final List<Mode> MODES = List.of(Mode.MAJOR, Mode.MINOR, Mode.DORIAN, Mode.MIXOLYDIAN);

    // So much better must another mode correlate before the score is not believed.
    private static final double TRUST = 0.2;

    private KeyEstimate() {}

    /** Returns a key for each measure; measures of one signature and mode that follow one another have one key. */
    static List<Key> of(Tune tune, List<HarmonySpan> spans, List<MelodyTones> tones) {
        List<Key> keys = new ArrayList<>();
        int from = 0;
        for (int m = 1; m <= tune.measures().size(); m++) {
            if (m == tune.measures().size() || !key(tune, m).equals(key(tune, from))) {
                Key best = best(key(tune, from), heard(spans, tones, from, m));
                for (int each = from; each < m; each++) {
                    keys.add(best);
                }
                from = m;
            }
        }
        return keys;
    }

    private static Key key(Tune tune, int measure) {
        return tune.measures().get(measure).key();
    }

    private static double[] heard(List<HarmonySpan> spans, List<MelodyTones> tones, int from, int to) {
        List<MelodyTones> part = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            int measure = spans.get(i).measure();
            if (measure >= from && measure < to) {
                part.add(tones.get(i));
            }
        }
        return KeyProfile.sum(part);
    }

    private static Key best(Key written, double[] heard) {
        Key best = written;
        double most = KeyProfile.correlation(heard, written) + TRUST;
        for (Mode mode : MODES) {
            Key other = new Key(written.fifths(), mode);
            double correlation = KeyProfile.correlation(heard, other);
            if (correlation > most) {
                best = other;
                most = correlation;
            }
        }
        return best;
    }
}
