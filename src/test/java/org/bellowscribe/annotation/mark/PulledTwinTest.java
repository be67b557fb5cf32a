package org.bellowscribe.annotation.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.Outcome;
import org.bellowscribe.solver.Solver;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The D/G box has the bass and the chord of D in both directions, on different buttons; E4 exists on the pull only. */
class PulledTwinTest {

    private static String line(Style style) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("dg-21");
        Tune tune = TuneText.of("[D] D4 F#4 D4 F#4 | E4 E4 E4 E4 | D4 F#4 D4*2");
        SolverOptions options = new SolverOptions(
                MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.ONCE, true, SolverOptions.USUAL_CELL_LIMIT);
        Outcome outcome = Solver.solve(tune, box, UsualPlan.of(tune, box), options);
        Arrangement arrangement = new Arrangement(
                tune, box, assertInstanceOf(Outcome.Solved.class, outcome).solution(), style);
        return Texts.line(new LeftHand(), arrangement, "left-hand");
    }

    @Test
    void styleMayTellTheSameSoundOnTwoButtonsApart(@TempDir Path folder) throws IOException, DiagnosedException {
        Path file = folder.resolve("own.xml");
        Files.writeString(file, "<style id='own' name='Own'><left-hand pulled-twin=\"'\"/></style>");
        assertEquals("D d D d D' d' D' d' D d D·d", line(StyleLibrary.find(file.toString())));
    }

    @Test
    void stylesOfTheLibraryDoNot() throws DiagnosedException {
        assertEquals("D d D d D d D d D d D·d", line(StyleLibrary.find("parentheses")));
    }
}
