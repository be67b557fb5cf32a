package org.bellowscribe.instrument;

import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/**
 * What a stop-watch says about bellows: how long they last from fully open to closed, at usual loudness and without
 * force. All in seconds; null for what was not timed.
 *
 * @param pitch the note that is held in the first three
 * @param note that note alone
 * @param bass that note and one bass
 * @param chord that note and one chord
 * @param air the air button fully pressed, in silence
 * @param lightAir the air button lightly pressed, in silence
 */
public record Timings(
        Pitch pitch,
        double note,
        @Nullable Double bass,
        @Nullable Double chord,
        @Nullable Double air,
        @Nullable Double lightAir) {}
