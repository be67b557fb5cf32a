package org.bellowscribe.solver.manner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.RuleCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MannerWriterTest {

    private static final Manner USUAL = MannerLibrary.of(MannerLibrary.DEFAULT_ID);

    static java.util.List<String> manners() {
        return MannerLibrary.ids();
    }

    private static Manner read(String text) throws DiagnosedException, IOException {
        return MannerLibrary.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static int points(Manner manner, RuleCase at) {
        return manner.byRule().getOrDefault(at.rule(), Points.NONE).of(at.name());
    }

    @ParameterizedTest
    @MethodSource("manners")
    void whatIsWrittenIsReadBack(String id) throws DiagnosedException, IOException {
        Manner manner = MannerLibrary.of(id);
        Manner named = new Manner("mine", "A & B < C.", manner.remarks(), manner.byRule(), manner.patterns());
        Manner read = read(MannerWriter.write(named, USUAL));
        assertEquals("A & B < C.", read.summary());
        assertEquals(manner.remarks(), read.remarks());
        RuleCase.all().forEach(each -> assertEquals(points(manner, each), points(read, each), each::toString));
    }

    @Test
    void onlyWhatDiffersFromAMannerOfTheLibraryIsWritten() {
        String text = MannerWriter.write(MannerLibrary.of("across-the-rows"), USUAL);
        assertTrue(text.contains("<points case=\"very-quick\">20</points>"), text);
        assertFalse(text.contains("finger-stretch"), text);
    }

    @Test
    void aMannerBasedOnAFileIsWrittenWhole() throws DiagnosedException, IOException {
        Manner own = new Manner("own", "Mine.", java.util.List.of(), USUAL.byRule(), USUAL.patterns());
        String text = MannerWriter.write(own, own);
        assertFalse(text.contains("based-on"), text);
        Manner read = read(text);
        RuleCase.all().forEach(each -> assertEquals(points(USUAL, each), points(read, each), each::toString));
    }

    @Test
    void anIdIsMadeOfSmallLettersAndDigits() {
        assertEquals("my-way-2", MannerWriter.id("My Way (2)"));
        assertEquals("learned", MannerWriter.id("!"));
    }
}
