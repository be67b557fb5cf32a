package org.bellowscribe.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.score.Tune;

/**
 * What came of trying a tune.
 *
 * @param file the file as the user named it
 * @param tune the tune as it is written
 * @param trials every instrument in every key, the best first
 */
public record TuneFit(String file, Tune tune, List<Trial> trials) {

    /** Copies the list. */
    public TuneFit {
        trials = List.copyOf(trials);
    }

    /** Returns the names of the keys that sound, by semitones of transposition. */
    public Map<Integer, String> keyNames() {
        Map<Integer, String> names = new HashMap<>();
        for (Trial trial : trials) {
            names.computeIfAbsent(
                    trial.semitones(), any -> trial.soundingKey(tune).name());
        }
        return names;
    }
}
