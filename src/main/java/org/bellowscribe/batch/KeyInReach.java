package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.marking.KeySearch;
import org.bellowscribe.marking.MarkSettings;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.KeyName;
import org.jspecify.annotations.Nullable;

/** Tells of scores, without deciding anything, whether they can be moved to a key that is wished. */
public final class KeyInReach {

    private final Map<Wished, Optional<Diagnostic>> known = new HashMap<>();

    private record Wished(Path score, ReadingOptions reading, KeyName key) {}

    /** Returns why a score is never in the key of its settings; null if it can be, or cannot be read. */
    public @Nullable Diagnostic objection(Path score, MarkSettings settings) {
        KeyName key = settings.key().name();
        // A tonic alone is reached from every mode.
        if (key == null || key.mode() == null) {
            return null;
        }
        return known.computeIfAbsent(new Wished(score, settings.reading(), key), KeyInReach::find)
                .orElse(null);
    }

    private static Optional<Diagnostic> find(Wished wished) {
        try {
            String text = ScoreDocument.decode(Source.bytes(wished.score()))
                    .withoutMarks()
                    .text();
            Tune tune = ScoreReader.read(text, "", wished.reading());
            return Optional.ofNullable(KeySearch.otherMode(tune, wished.key()));
        } catch (DiagnosedException | IOException e) {
            // That is for the run that marks it to say.
            return Optional.empty();
        }
    }
}
