package org.bellowscribe.annotation;

import static org.bellowscribe.solver.AirUse.FULL;
import static org.bellowscribe.solver.AirUse.LIGHT;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class JoinedAirTest {

    private static final List<String> AIR = List.of("air");

    private static String words(Sketch sketch, SignedMarks signed, List<String> ids) throws DiagnosedException {
        return words(Annotators.annotate(sketch.arrangement(), ids, signed));
    }

    private static String words(List<Annotation> marks) {
        return marks.stream()
                .filter(Annotation.Words.class::isInstance)
                .map(mark -> mark.noteIndex() + " " + ((Annotation.Words) mark).text())
                .collect(Collectors.joining("; "));
    }

    private static String words(Sketch sketch) throws DiagnosedException {
        return words(sketch, SignedMarks.NONE, AIR);
    }

    private static Sketch three() {
        return new Sketch(1)
                .pull("1.3")
                .pull("1.4")
                .air(FULL)
                .pull("1.5")
                .air(FULL)
                .pull("1.4")
                .air(FULL)
                .pull("1.3");
    }

    @Test
    void pressesAtNeighborsAreOneMarkThatGoesOn() throws DiagnosedException {
        assertEquals("1 air; 2 —; 3 —", words(three()));
    }

    @Test
    void aNoteBetweenPartsThem() throws DiagnosedException {
        Sketch sketch =
                new Sketch(1).pull("1.3").air(FULL).pull("1.4").pull("1.5").air(FULL);
        assertEquals("0 air; 2 air", words(sketch));
    }

    @Test
    void aLightPressDoesNotGoOnFromAFullOne() throws DiagnosedException {
        Sketch sketch = new Sketch(1)
                .pull("1.3")
                .air(FULL)
                .pull("1.4")
                .air(LIGHT)
                .pull("1.5")
                .air(LIGHT);
        assertEquals("0 air; 1 light air; 2 —", words(sketch));
    }

    @Test
    void whereTheBellowsTurnItIsSaidAnew() throws DiagnosedException {
        Sketch sketch = new Sketch(1)
                .pull("1.3")
                .air(FULL)
                .push("1.4")
                .air(FULL)
                .push("1.5")
                .air(FULL);
        assertEquals("0 air; 1 push+air; 2 —", words(sketch));
    }

    @Test
    void eachMeasureSaysItAnew() throws DiagnosedException {
        Sketch sketch = new Sketch(1)
                .pull("1.3")
                .air(FULL)
                .pull("1.4")
                .air(FULL)
                .measure()
                .pull("1.5")
                .air(FULL)
                .pull("1.3")
                .air(FULL);
        assertEquals("0 air; 1 —; 2 air; 3 —", words(sketch));
    }

    @Test
    void aPressThatIsFixedStandsAlone() throws DiagnosedException {
        assertEquals("1 air; 2 air!; 3 air", words(three(), SignedMarks.NONE.plus(2, MarkAspect.AIR), AIR));
    }

    @Test
    void whereOtherWordsStandItIsSaidAnew() throws DiagnosedException {
        Sketch sketch = new Sketch(1)
                .pull("1.3")
                .air(FULL)
                .pull("1.4")
                .air(FULL)
                .pull("1.6")
                .hand(5)
                .air(FULL)
                .pull("1.7")
                .hand(5)
                .air(FULL);
        assertEquals("0 air; 1 —; 2 —; 3 —", words(sketch));
        assertEquals(
                "0 air, hand 3; 1 air; 2 air, hand 5; 3 air", words(sketch, SignedMarks.NONE, List.of("air", "hand")));
    }

    @Test
    void aStyleCanSayEachPressByItsWord() throws DiagnosedException {
        List<Annotation> marks = Annotators.annotate(three().arrangement(Sketch.style("apart")), AIR);
        assertEquals("1 air; 2 air; 3 air", words(marks));
    }

    @Test
    void theLegendTellsTheSignWhereItStands() throws DiagnosedException {
        assertEquals(List.of("air", "—"), signs(three()));
        assertEquals(List.of("air"), signs(new Sketch(1).pull("1.3").air(FULL)));
    }

    private static List<String> signs(Sketch sketch) throws DiagnosedException {
        Arrangement arrangement = sketch.arrangement();
        return Annotators.legend(
                        arrangement.tune(), arrangement.instrument(), arrangement.solution(), arrangement.style(), AIR)
                .stream()
                .map(LegendEntry::sign)
                .toList();
    }
}
