package org.bellowscribe.musicxml.read;

import java.util.List;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.score.Tune;

/**
 * A tune, and what its score has against the MusicXML schema.
 *
 * @param tune the tune with the remarks of its reading
 * @param schemaRemarks warnings and notes that those do not say already; empty for a valid score
 */
public record CheckedTune(Tune tune, List<Diagnostic> schemaRemarks) {}
