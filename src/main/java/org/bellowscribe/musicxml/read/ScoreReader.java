package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import org.audiveris.proxymusic.ScorePartwise;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Tune;

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
        return read(LeanScoreParser.parse(text), fallbackTitle, options);
    }

    /**
     * Reads a score and checks it against the MusicXML schema.
     *
     * @param text the decoded text of the score
     * @param fallbackTitle title for a score that has none
     * @param options which line to read
     * @throws DiagnosedException as {@link #read} does; about a value that cannot be read the schema has its say too
     */
    public static CheckedTune readChecked(String text, String fallbackTitle, ReadingOptions options)
            throws DiagnosedException {
        LeanScoreParser.Checked checked = LeanScoreParser.parseAndCheck(text);
        try {
            Tune tune = read(checked.score(), fallbackTitle, options);
            return new CheckedTune(tune, SchemaRemarks.of(checked.findings(), tune));
        } catch (DiagnosedException e) {
            List<Diagnostic> all = new ArrayList<>(e.diagnostics());
            if (all.stream().anyMatch(remark -> remark.code() == DiagnosticCode.BAD_VALUE)) {
                all.addAll(SchemaRemarks.ofRefused(checked.findings(), e.diagnostics()));
            }
            throw new DiagnosedException(all);
        }
    }

    private static Tune read(LeanScore lean, String fallbackTitle, ReadingOptions options) throws DiagnosedException {
        ScorePartwise score = ScoreUnmarshaller.unmarshal(lean);
        try {
            return read(score, lean, fallbackTitle, options);
        } catch (ArithmeticException e) {
            // Fractions are exact and stop where they no longer could be.
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.BAD_VALUE,
                    Place.FILE,
                    "The durations of the notes do not add up in exact fractions.",
                    "Maybe the divisions are wrong; export the tune again."));
        }
    }

    private static Tune read(ScorePartwise score, LeanScore lean, String fallbackTitle, ReadingOptions options)
            throws DiagnosedException {
        RoadMap road = new RoadMap();
        TempoMarks tempos = new TempoMarks();
        List<Diagnostic> remarks = new ArrayList<>();
        lean.odd().forEach(odd -> remarks.add(odd.warning()));
        List<PartContent> parts = new PartsReader(score, lean, new PartReader.Gathered(lean.bad(), road, tempos))
                .read(options.staff() == null ? 1 : options.staff());
        MelodyLine line = new MelodyChooser(parts, options).choose(remarks);
        String title = TitleReader.title(score);
        if (title == null) {
            title = fallbackTitle;
            remarks.add(Diagnostic.note(
                    DiagnosticCode.ASSUMED,
                    Place.FILE,
                    "The score has no title; it is called \"%s\".".formatted(title)));
        }
        String headWords = title + "\n" + TitleReader.headWords(score) + "\n" + firstWords(parts.get(line.part()));
        return new TuneBuilder(parts, line, road, remarks)
                .build(title, new TempoFinder(tempos, headWords, options.quartersPerMinute()));
    }

    private static String firstWords(PartContent part) {
        StringBuilder words = new StringBuilder();
        if (!part.measures().isEmpty()) {
            part.measures()
                    .get(0)
                    .words()
                    .forEach(each -> words.append(each.text()).append('\n'));
        }
        return words.toString();
    }
}
