package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.audiveris.proxymusic.PartList;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;
import org.audiveris.proxymusic.ScorePartwise.Part;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** All parts of a score. */
final class PartsReader {

    private final ScorePartwise score;
    private final LeanScore lean;
    private final PartReader.Gathered gathered;

    PartsReader(ScorePartwise score, LeanScore lean, PartReader.Gathered gathered) {
        this.score = score;
        this.lean = lean;
        this.gathered = gathered;
    }

    /**
     * Returns the parts in score order.
     *
     * @param staff the staff whose attributes count where staves differ
     */
    List<PartContent> read(int staff) {
        Map<String, String> names = names(score.getPartList());
        List<PartContent> parts = new ArrayList<>();
        for (int i = 0; i < score.getPart().size(); i++) {
            Part part = score.getPart().get(i);
            String id = lean.partIds().get(i);
            boolean guessed = DivisionsGuess.areMissing(part);
            Fraction divisions = guessed ? DivisionsGuess.guess(part, score) : Fraction.QUARTER;
            PartReader reader = new PartReader(id, staff, gathered, divisions);
            List<MeasureContent> measures = reader.read(part);
            OddValue bad = lean.bad().getOrDefault(LeanScore.partId(i), reader.broken());
            parts.add(new PartContent(
                    id,
                    names.getOrDefault(id, ""),
                    measures,
                    reader.staves(),
                    bad,
                    guessed ? assumption(id, divisions) : null));
        }
        return parts;
    }

    private static Diagnostic assumption(String part, Fraction divisions) {
        return Diagnostic.note(
                DiagnosticCode.ASSUMED,
                Place.FILE,
                "Part %s gives no divisions before its first note; a quarter note is read as %s of them."
                        .formatted(part, divisions.denominator() == 1 ? divisions.numerator() : divisions));
    }

    private static Map<String, String> names(@Nullable PartList list) {
        Map<String, String> names = new HashMap<>();
        if (list == null) {
            return names;
        }
        for (Object each : list.getPartGroupOrScorePart()) {
            if (each instanceof ScorePart part && part.getPartName() != null) {
                String name = part.getPartName().getValue();
                names.put(
                        String.valueOf(part.getId()),
                        name == null ? "" : name.replaceAll("\\s+", " ").strip());
            }
        }
        return names;
    }
}
