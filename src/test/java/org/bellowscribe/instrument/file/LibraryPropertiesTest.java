package org.bellowscribe.instrument.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.bellowscribe.instrument.HomeKeys;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.InstrumentCheck;
import org.bellowscribe.instrument.KeyRanges;
import org.bellowscribe.instrument.KeyboardDrawing;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.theory.PitchClass;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every instrument of the library. */
class LibraryPropertiesTest {

    private static final Pattern CIRCLE = Pattern.compile("<circle cx=\"([\\d.]+)\" cy=\"([\\d.]+)\" r=\"([\\d.]+)\"");

    static List<Instrument> instruments() {
        return InstrumentLibrary.all().stream().map(LibraryEntry::instrument).toList();
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void checkHasNoDoubts(Instrument instrument) {
        assertEquals(List.of(), InstrumentCheck.of(instrument));
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void everyHomeKeyIsPlayable(Instrument instrument) {
        List<String> playable = KeyRanges.of(instrument, List.of(Mode.MAJOR)).stream()
                .map(range -> range.key().tonic().toString())
                .toList();
        for (PitchClass key : HomeKeys.of(instrument).values()) {
            assertTrue(playable.contains(key.toString()), () -> key + " in " + playable);
        }
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void drawnButtonsLieOnThePageAndApart(Instrument instrument) {
        List<double[]> circles = circles(KeyboardDrawing.svg(instrument));
        assertEquals(instrument.buttons().size() + instrument.leftHand().size() + 1, circles.size());
        for (int i = 0; i < circles.size(); i++) {
            double[] a = circles.get(i);
            assertTrue(a[0] - a[2] > 10 && a[0] + a[2] < 200 && a[1] - a[2] > 10 && a[1] + a[2] < 287);
            for (double[] b : circles.subList(0, i)) {
                assertTrue(Math.hypot(a[0] - b[0], a[1] - b[1]) > a[2] + b[2]);
            }
        }
    }

    private static List<double[]> circles(String svg) {
        List<double[]> circles = new ArrayList<>();
        for (Matcher circle = CIRCLE.matcher(svg); circle.find(); ) {
            circles.add(new double[] {
                Double.parseDouble(circle.group(1)),
                Double.parseDouble(circle.group(2)),
                Double.parseDouble(circle.group(3))
            });
        }
        return circles;
    }

    @ParameterizedTest
    @MethodSource("instruments")
    void nameSaysTheLayoutAndNamesNobody(Instrument instrument) {
        String layout =
                "(anglo|club|concertina|row|rows?|buttons?|accidentals|bass(es)?|notes?|thirds?|sixth|home|start|third|fourth|low|lower|inner"
                        + "|outer|push|pull|reversed|spoons|no|on|the|one|and|both|ways|without)";
        Stream.of(instrument.name().split("[^A-Za-z]+"))
                .filter(word -> word.length() > 1)
                .forEach(word -> assertTrue(word.matches("(?i)" + layout), word));
    }
}
