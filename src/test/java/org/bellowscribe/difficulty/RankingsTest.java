package org.bellowscribe.difficulty;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("difficulty")
class RankingsTest {
    @Test
    void laws() throws Exception {
        StringBuilder out = new StringBuilder();
        var box = Deciding.box("dg-21");
        int n = 0, bad = 0, tn = 0, tbad = 0;
        for (String line : java.nio.file.Files.readAllLines(java.nio.file.Path.of("target/d22.list"))) {
            Tune tune = Deciding.read(java.nio.file.Path.of(line));
            DecidedTune whole = Deciding.decide(tune, box);
            double d = Difficulty.of(whole).points();
            out.append(String.format(Locale.ROOT, "%s %.3f%n", tune.title(), d));
            for (double f : List.of(0.5, 0.75, 0.9, 1.1, 1.25)) {
                DecidedTune other = Deciding.decide(Deciding.faster(tune, f), box);
                if (other == null) continue;
                double e = Difficulty.of(other).points();
                tn++;
                if ((f < 1) == (e > d + 1e-9)) {
                    tbad++;
                    out.append(String.format(Locale.ROOT, "  tempo %.2f: %.3f%n", f, e));
                    why(out, whole, other);
                }
            }
            List<Button> used = whole.solution().steps().stream()
                    .flatMap(s -> s.buttons().stream())
                    .distinct()
                    .toList();
            for (Button b : used) {
                DecidedTune other = Deciding.decide(tune, Deciding.without(box, b));
                if (other == null) continue;
                double e = Difficulty.of(other).points();
                n++;
                if (e < d - 1e-9) {
                    bad++;
                    out.append(String.format(Locale.ROOT, "  without %s: %.3f%n", b.id(), e));
                    why(out, whole, other);
                }
            }
        }
        out.append("removed " + n + " bad " + bad + "; tempo " + tn + " bad " + tbad + "\n");
        java.nio.file.Files.writeString(java.nio.file.Path.of("target/laws.txt"), out.toString());
        assertTrue(n > 0);
    }

    private static void why(StringBuilder out, DecidedTune a, DecidedTune b) {
        var x = Difficulty.of(a).terms();
        var y = Difficulty.of(b).terms();
        out.append("     ");
        for (int i = 0; i < x.size(); i++) {
            double q = y.get(i).points() - x.get(i).points();
            if (Math.abs(q) > 0.01) out.append(x.get(i).term().id() + String.format(Locale.ROOT, " %+.2f ", q));
        }
        out.append("\n");
    }
}
