package org.bellowscribe.musicxml.read;

import org.audiveris.proxymusic.Harmony;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/**
 * A chord symbol as written.
 *
 * @param onset time from the start of its measure
 * @param element what is written
 * @param transposition semitones from written to sounding
 * @param bad the value that cannot be read, or null
 */
record WrittenHarmony(
        Fraction onset,
        Harmony element,
        int transposition,
        @Nullable OddValue bad) {}
