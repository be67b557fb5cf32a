package org.bellowscribe.instrument.file;

import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.Bellows;
import org.jspecify.annotations.Nullable;

/** Reads bellows, air button and reeds; what the file leaves out stays as it was. */
final class AirReader {

    private final DefinitionElement element;
    private final List<Diagnostic> problems;

    /**
     * Creates a reader.
     *
     * @param element the element that holds {@code bellows}, {@code air-button} and {@code reeds}
     * @param problems gets a remark for everything that is wrong
     */
    AirReader(DefinitionElement element, List<Diagnostic> problems) {
        this.element = element;
        this.problems = problems;
    }

    /** Returns the bellows and air button. */
    Bellows bellows(Bellows before) {
        DefinitionElement bellows = element.child("bellows");
        DefinitionElement button = element.child("air-button");
        double light = number(button, "light-flow", before.lightAirFlow());
        double full = number(button, "full-flow", before.fullAirFlow());
        if (light > full) {
            report(
                    "The light flow of the air button (%s) is more than its full flow (%s).".formatted(light, full),
                    "Maybe give both in <air-button>.");
            return before;
        }
        return new Bellows(
                number(bellows, "capacity", before.capacity()),
                number(bellows, "reserve", before.reserve()),
                light,
                full);
    }

    /** Returns how much air the reeds take. */
    AirModel reeds(AirModel before) {
        DefinitionElement reeds = element.child("reeds");
        double least = number(reeds, "least", before.least());
        double most = number(reeds, "most", before.most());
        if (least > most) {
            report(
                    "The least air of a reed (%s) is more than the most (%s).".formatted(least, most),
                    "Maybe give both in <reeds>.");
        }
        return new AirModel(
                number(reeds, "reference-frequency", before.referenceFrequency()),
                number(reeds, "exponent", before.exponent()),
                least,
                most,
                voices(reeds, before.voices()),
                number(reeds, "bass-flow", before.bassFlow()),
                number(reeds, "chord-flow", before.chordFlow()),
                number(reeds, "chord-without-third-flow", before.chordWithoutThirdFlow()),
                number(reeds, "loudness-slack", before.loudnessSlack()));
    }

    private static List<Integer> voices(@Nullable DefinitionElement reeds, List<Integer> before) {
        DefinitionElement voices = reeds == null ? null : reeds.child("voices");
        return voices == null
                ? before
                : Stream.of(voices.text().split("\\s+")).map(Integer::valueOf).toList();
    }

    private static double number(@Nullable DefinitionElement parent, String name, double before) {
        DefinitionElement child = parent == null ? null : parent.child(name);
        return child == null ? before : Double.parseDouble(child.text());
    }

    private void report(String text, String advice) {
        problems.add(Diagnostic.error(DiagnosticCode.BAD_DEFINITION, element.place(), text, advice));
    }
}
