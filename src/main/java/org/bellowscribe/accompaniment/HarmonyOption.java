package org.bellowscribe.accompaniment;

import org.bellowscribe.theory.ChordSymbol;

/**
 * A harmony that may be meant at a moment.
 *
 * @param chord the harmony
 * @param misfit how badly it fits the melody, in points; 0 for a given chord symbol and for the best fit
 */
public record HarmonyOption(ChordSymbol chord, int misfit) {}
