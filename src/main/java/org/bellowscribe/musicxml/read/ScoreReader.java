package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.audiveris.proxymusic.PartList;
import org.audiveris.proxymusic.ScorePart;
import org.audiveris.proxymusic.ScorePartwise;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/** Reads a MusicXML score, partwise or timewise, into a tune. */
public final class ScoreReader {

    private ScoreReader() {}

    /** Builds what all readings share, half a second's work; worth calling once before many threads read. */
    public static void warm() {
        ScoreUnmarshaller.warm();
    }

    /**
     * Reads a score.
     *
     * @param text the decoded text of the score
     * @param fallbackTitle title for a score that has none
     * @param options which line to read
     * @throws DiagnosedException if the text is no score, has no melody or has a value that cannot be read
     */
    public static Tune read(String text, String fallbackTitle, ReadingOptions options) throws DiagnosedException {
        LeanScore lean = LeanScoreParser.parse(text);
        ScorePartwise score = ScoreUnmarshaller.unmarshal(lean);
        try {
            RoadMap road = new RoadMap();
            TempoMarks tempos = new TempoMarks();
            List<PartContent> parts = parts(score, lean, new PartReader.Gathered(lean.bad(), road, tempos), options);
            MelodyLine line = new MelodyChooser(parts, options).choose();
            TuneBuilder builder = new TuneBuilder(parts, line, road);
            lean.odd().forEach(odd -> builder.remark(odd.warning()));
            String title = TitleReader.title(score);
            return builder.build(title == null ? fallbackTitle : title, TitleReader.headWords(score), tempos.first());
        } catch (ArithmeticException e) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.BAD_VALUE,
                    Place.FILE,
                    "The durations of the notes do not add up in exact fractions.",
                    "Maybe the divisions are wrong; export the tune again."));
        }
    }

    private static List<PartContent> parts(
            ScorePartwise score, LeanScore lean, PartReader.Gathered gathered, ReadingOptions options) {
        Map<String, String> names = names(score.getPartList());
        int staff = options.staff() == null ? 1 : options.staff();
        List<PartContent> parts = new ArrayList<>();
        for (int i = 0; i < score.getPart().size(); i++) {
            String id = lean.partIds().get(i);
            List<MeasureContent> measures = new PartReader(id, staff, gathered, Fraction.QUARTER)
                    .read(score.getPart().get(i));
            parts.add(new PartContent(
                    id, names.getOrDefault(id, ""), measures, lean.bad().get(LeanScore.partId(i)), List.of()));
        }
        return parts;
    }

    private static Map<String, String> names(PartList list) {
        Map<String, String> names = new HashMap<>();
        if (list == null) {
            return names;
        }
        for (Object each : list.getPartGroupOrScorePart()) {
            if (each instanceof ScorePart part && part.getPartName() != null) {
                String name = part.getPartName().getValue();
                names.put(String.valueOf(part.getId()), name == null ? "" : name.strip());
            }
        }
        return names;
    }
}
