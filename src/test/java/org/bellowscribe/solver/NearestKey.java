package org.bellowscribe.solver;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.musicxml.ScoreDocument;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Transposition;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.model.Choices;
import org.jspecify.annotations.Nullable;

/** Tunes of score files in their nearest key that an instrument has all notes of. */
final class NearestKey {

    private static final int OCTAVE = 12;

    private NearestKey() {}

    /** Returns the tune of a file, or null if it has none or no key within an octave can be played. */
    static @Nullable Tune of(Path file, Instrument instrument) throws IOException {
        try {
            String text = ScoreDocument.decode(Files.readAllBytes(file)).text();
            Tune written = ScoreReader.read(text, String.valueOf(file.getFileName()), ReadingOptions.DEFAULT);
            for (int distance = 0; distance <= OCTAVE; distance++) {
                for (int semitones : new int[] {distance, -distance}) {
                    if (Transposition.isPossible(written, semitones)) {
                        Tune tune = Transposition.of(written, semitones);
                        if (isPlayable(tune, instrument)) {
                            return tune;
                        }
                    }
                }
            }
        } catch (DiagnosedException e) {
            // A file without a tune.
        }
        return null;
    }

    private static boolean isPlayable(Tune tune, Instrument instrument) {
        Choices choices = new Choices(instrument);
        return tune.events().stream()
                .noneMatch(event -> choices.of(new Moment(event, tune.seconds(event), false))
                        .isEmpty());
    }
}
