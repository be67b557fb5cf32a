package org.bellowscribe.fit;

import java.util.List;
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
}
