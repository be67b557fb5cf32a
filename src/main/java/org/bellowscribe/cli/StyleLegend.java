package org.bellowscribe.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bellowscribe.accompaniment.Accompaniment;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.musicxml.read.ScoreReader;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;

/** What the signs of a style mean, shown at a short tune on the usual instrument with all marks. */
final class StyleLegend {

    private static final String TUNE = "signs.musicxml";

    private StyleLegend() {}

    /** Returns the style's name and its signs, a sign a line. */
    static String of(Style style) {
        StringBuilder text = new StringBuilder("%s%n  %s%n".formatted(style.id(), style.name()));
        text.append("  Programs that show it whole: %s.%n"
                .formatted(style.programs().isEmpty() ? "not looked at" : style.programs()));
        try {
            Instrument instrument = InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID);
            text.append("  All marks of a short tune on the %s:%n".formatted(instrument.name()));
            for (LegendEntry entry : legend(style, instrument)) {
                text.append("  %-20s %s%n".formatted(entry.sign(), entry.meaning()));
            }
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(TUNE), e);
        }
        return text.toString();
    }

    private static List<LegendEntry> legend(Style style, Instrument instrument) throws DiagnosedException {
        Tune tune = ScoreReader.read(tune(), TUNE, new ReadingOptions(null, null, null));
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT);
        Task task =
                new Task(tune, instrument, Accompaniment.plan(tune, instrument, PatternLibrary.usual()), options, 0);
        if (!(Solver.solve(task) instanceof Outcome.Solved solved)) {
            throw new IllegalStateException("The tune (%s) must be playable.".formatted(TUNE));
        }
        List<String> marks = Annotators.all().stream().map(Annotator::id).toList();
        return Annotators.legend(tune, instrument, solved.solution(), style, marks);
    }

    private static String tune() {
        try (InputStream stream = StyleLegend.class.getResourceAsStream(TUNE)) {
            if (stream == null) {
                throw new IllegalStateException("The file (%s) must be beside this class.".formatted(TUNE));
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
