package org.bellowscribe.solver.manner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.solver.Manner;
import org.junit.jupiter.api.Test;

class MannerLibraryTest {

    private static Manner read(String xml) throws DiagnosedException, IOException {
        return MannerLibrary.read(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void mannerTakesOverWhatItDoesNotSay() throws DiagnosedException, IOException {
        Manner manner = read("""
                <manner id="own" based-on="along-the-row">
                  <summary>Reversals are cheap.</summary>
                  <rule id="bellows-reversal"><points case="slow">1</points></rule>
                </manner>
                """);
        assertEquals(1, manner.byRule().get("bellows-reversal").of("slow"));
        assertEquals(3, manner.byRule().get("bellows-reversal").of("medium"));
        assertEquals(4, manner.byRule().get("finger-stretch").of("each"));
    }

    @Test
    void misspelledRuleAndCaseAreNamedWithTheirLines() {
        DiagnosedException refused = assertThrows(DiagnosedException.class, () -> read("""
                        <manner id="own">
                          <summary>Wrong twice.</summary>
                          <rule id="bellows-reversals"><points case="slow">1</points></rule>
                          <rule id="hand-shift"><points case="slowly">1</points></rule>
                        </manner>
                        """));
        List<Diagnostic> remarks = refused.diagnostics();
        assertEquals(List.of(3, 4), remarks.stream().map(r -> r.place().line()).toList());
        assertTrue(remarks.get(0).advice().get(0).contains("bellows-reversal"), remarks.toString());
        assertTrue(remarks.get(1).text().contains("slowly"), remarks.toString());
    }

    @Test
    void patternsAreTakenOverAndAddedTo() throws DiagnosedException, IOException {
        Manner manner = read("""
                <manner id="own" based-on="learner">
                  <summary>A first left hand in jigs.</summary>
                  <pattern id="first-beat" time="6/8"/>
                </manner>
                """);
        assertEquals(
                List.of("4/4 bass-chord-slow", "6/8 first-beat"),
                manner.patterns().stream()
                        .map(each -> each.time() + " " + each.pattern().id())
                        .toList());
        assertEquals(List.of(), MannerLibrary.of("across-the-rows").patterns());
    }

    @Test
    void misspelledPatternIsNamedWithItsLine() {
        DiagnosedException refused = assertThrows(DiagnosedException.class, () -> read("""
                        <manner id="own">
                          <summary>Wrong.</summary>
                          <pattern id="first-beats"/>
                        </manner>
                        """));
        Diagnostic remark = refused.diagnostics().get(0);
        assertEquals(3, remark.place().line());
        assertTrue(remark.advice().get(0).contains("first-beat"), remark.toString());
    }

    @Test
    void negativePointsAreAgainstTheSchema() {
        assertThrows(
                DiagnosedException.class,
                () -> read("<manner id='own'><summary>Wrong.</summary><rule id='hand-shift'>"
                        + "<points case='slow'>-1</points></rule></manner>"));
    }
}
