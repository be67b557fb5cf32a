package org.bellowscribe.marking;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.musicxml.read.ReadingOptions;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;

/** Tunes of the demo book, decided as when no option is given. */
public final class SampleTune {

    private SampleTune() {}

    /** Returns the settings for an instrument. */
    public static MarkSettings settings(Instrument instrument) throws DiagnosedException {
        return new MarkSettings(
                instrument,
                StyleLibrary.find(StyleLibrary.DEFAULT_ID),
                Annotators.defaultIds(),
                Played.ALL,
                new SolverOptions(
                        MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, SolverOptions.USUAL_CELL_LIMIT),
                KeyChoice.AS_WRITTEN,
                ReadingOptions.DEFAULT);
    }

    /** Returns what is decided about a tune of the demo book. */
    public static DecidedTune decided(String name) {
        try {
            return ((Decision.Decided) decision(name, settings(InstrumentLibrary.find(InstrumentLibrary.DEFAULT_ID))))
                    .tune();
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(name), e);
        }
    }

    /** Returns what comes of deciding a tune of the demo book. */
    public static Decision decision(String name, MarkSettings settings) throws DiagnosedException {
        try {
            byte[] bytes = Files.readAllBytes(Path.of("samples", "book", name + ".musicxml"));
            return new TuneDecider(settings).decide(new TuneReader(settings).read(bytes, name, null));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the texts of remarks. */
    static List<String> texts(Decision decision) {
        return decision.remarks().stream().map(remark -> remark.text()).toList();
    }
}
