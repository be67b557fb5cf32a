package org.bellowscribe.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Severity;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** What holds for every tune of the book. */
class SamplesTest {

    static Stream<Sample> samples() {
        return Sample.all().stream();
    }

    @Test
    void bookHasAtLeastFourteenTunes() {
        assertTrue(Sample.all().size() >= 14, () -> "only " + Sample.all().size());
    }

    @Test
    void titlesDiffer() {
        Set<String> titles = new HashSet<>();
        for (Sample sample : Sample.all()) {
            List<Element> title = Sample.find(sample.root(), "work-title");
            assertEquals(1, title.size(), sample::name);
            assertTrue(titles.add(title.get(0).getTextContent()), () -> sample.name() + " has a title used before");
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void namesOfFilesAreKebabCase(Sample sample) {
        assertTrue(sample.name().matches("[a-z0-9]+(-[a-z0-9]+)*"), sample::name);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void descriptionIsOneSentence(Sample sample) {
        List<String> descriptions = Sample.find(sample.root(), "miscellaneous-field").stream()
                .filter(field -> field.getAttribute("name").equals("description"))
                .map(Element::getTextContent)
                .toList();
        assertEquals(1, descriptions.size());
        assertTrue(descriptions.get(0).matches("[A-Z][^.]+\\."), descriptions::toString);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void measuresAddUp(Sample sample) {
        for (Element part : Sample.find(sample.root(), "part")) {
            WrittenMeasures measures = WrittenMeasures.of(part);
            List<Fraction> unlike = measures.lengths().stream()
                    .filter(length -> !length.equals(measures.full()))
                    .toList();
            assertEquals(0, unlike.size() % 2, () -> "a pick-up without its end: " + unlike);
            // A pick-up and the short measure that ends its part of the tune follow each other in pairs.
            for (int i = 0; i < unlike.size(); i += 2) {
                assertEquals(measures.full(), unlike.get(i).plus(unlike.get(i + 1)), unlike::toString);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void partsHaveTheSameMeasures(Sample sample) {
        long kinds = Sample.find(sample.root(), "part").stream()
                .map(WrittenMeasures::of)
                .distinct()
                .count();
        assertEquals(1, kinds);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void tuneIsReadWithoutWarning(Sample sample) throws DiagnosedException {
        sample.tune().diagnostics().forEach(remark -> assertEquals(Severity.NOTE, remark.severity(), remark::text));
    }

    /** A pick-up that a repeat leaves out, or plays too often, would leave a bar that is not full. */
    @ParameterizedTest
    @MethodSource("samples")
    void playingThroughAllRepeatsGivesFullBars(Sample sample) throws DiagnosedException {
        Tune tune = sample.tune();
        Fraction full =
                WrittenMeasures.of(Sample.find(sample.root(), "part").get(0)).full();
        Fraction open = Fraction.ZERO;
        for (int index : tune.playOrder().measures()) {
            open = open.plus(tune.measures().get(index).length());
            open = open.compareTo(full) < 0 ? open : open.minus(full);
        }
        assertEquals(Fraction.ZERO, open);
    }
}
