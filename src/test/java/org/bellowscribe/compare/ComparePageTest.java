package org.bellowscribe.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.bellowscribe.replay.Played;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.junit.jupiter.api.Test;

class ComparePageTest {

    private static final Tune TUNE = TuneText.of("C4 C4 | D4 r", 60);

    private static ComparedTune compared(Tune tune, String a, String b) {
        Played one = new Played(tune, 5000)
                .push(1000, 1)
                .bass("0", "1")
                .push(1000, 1)
                .pull(2000, 1)
                .pull(0);
        Played other = new Played(tune, 5000)
                .push(1000, 1)
                .push(1000, 1)
                .fingers(2)
                .push(500, 2)
                .pull(2500)
                .air(AirUse.LIGHT, 2500);
        return new ComparedTune(
                "test.musicxml",
                new ComparedTune.Side(a, one.decided(), "test.A.musicxml", new byte[] {1}),
                new ComparedTune.Side(b, other.decided(), "test.B.musicxml", new byte[] {2}));
    }

    private static final List<ComparedTune> ONE = List.of(compared(TUNE, "along-the-row", "learner"));

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }

    @Test
    void differencesAreCountedByKind() {
        Differences found = Differences.of(ONE.get(0));
        assertEquals(
                "The two ways differ at 4 of 4 notes and rests: the direction of the bellows at 1, the button at 1, the"
                        + " finger at 2, the left hand at 1, the air button at 1.",
                found.words());
        assertEquals(Set.of(0, 1, 2, 3), found.events());
    }

    @Test
    void waysThatAreTheSameAreSaidToBe() {
        ComparedTune tune = ONE.get(0);
        assertEquals(
                "The two ways are the same.",
                Differences.of(new ComparedTune("test", tune.a(), tune.a())).words());
    }

    @Test
    void pageTellsWhichWayIsWhich() {
        String page = ComparePage.of(ONE, null);
        assertTrue(page.contains("<h3>A: along-the-row</h3>"), page);
        assertTrue(page.contains("<h3>B: learner</h3>"), page);
    }

    @Test
    void blindPageDoesNot() {
        String page = ComparePage.of(ONE, new Lots(7));
        assertFalse(page.contains("along-the-row"));
        assertFalse(page.contains("learner"));
        assertTrue(page.contains("<h3>A</h3>"));
        assertTrue(page.contains("data-seed=\"7\""));
    }

    @Test
    void keyTellsWhichWayIsWhich() {
        assertEquals("place,file,title,a,b\r\n1,test.musicxml,test,along-the-row,learner\r\n", CompareKey.of(ONE));
    }

    @Test
    void whatDiffersIsMarkedOnBothSides() {
        String page = ComparePage.of(ONE, null);
        assertTrue(page.contains("<mark>left C</mark>"), page);
        assertTrue(page.contains("<mark>finger 2</mark>"), page);
        assertTrue(page.contains("<mark>light air</mark>"), page);
        assertTrue(page.contains("<mark>no air</mark>"), page);
    }

    @Test
    void everyControlHasALabelAndAName() {
        String page = ComparePage.of(ONE, null);
        assertEquals(4, count(page, "<input type=\"radio\" name=\"tune-1\""));
        assertEquals(count(page, "<input") + count(page, "<textarea"), count(page, "<label"));
        assertEquals(1, count(page, "<legend>"));
        assertEquals(count(page, "<table"), count(page, "<caption>"));
        assertEquals(2, count(page, "role=\"img\" aria-label=\"Measures 1-2: from "));
    }

    @Test
    void titlesAreText() {
        Tune odd = new Tune(
                "</h2><script>alert(1)</script>\" \u202E",
                "P1",
                TUNE.measures(),
                TUNE.events(),
                List.of(),
                TUNE.tempo(),
                TUNE.playOrder(),
                List.of());
        String page = ComparePage.of(List.of(compared(odd, "a", "b")), null);
        assertEquals(4, count(page, "<script defer src="));
        assertEquals(4, count(page, "<script"));
        assertTrue(page.contains("&lt;/h2&gt;&lt;script&gt;alert(1)&lt;/script&gt;&quot; \uFFFD"), page);
    }

    @Test
    void choicesOfOnePageAreNotThoseOfAnother() {
        String one = ComparePage.of(ONE, new Lots(7));
        ComparedTune tune = ONE.get(0);
        String other = ComparePage.of(List.of(new ComparedTune("test.musicxml", tune.b(), tune.a())), new Lots(7));
        assertNotEquals(run(one), run(other));
    }

    private static String run(String page) {
        return page.replaceFirst("(?s).*data-run=\"([^\"]*)\".*", "$1");
    }

    @Test
    void scriptAndLookComeWithThePage() {
        String page = ComparePage.of(ONE, null);
        for (Map.Entry<String, byte[]> file : ComparePage.shared().entrySet()) {
            String name = file.getKey();
            if (name.endsWith(".js") || name.endsWith(".css")) {
                assertTrue(page.contains("\"" + name + "\""), name);
            }
            if (name.contains("compare")) {
                String text = new String(file.getValue(), StandardCharsets.UTF_8);
                assertFalse(text.matches("(?s).*(https?:|fetch\\(|import ).*"), name);
            }
        }
    }

    @Test
    void allOurScriptsTogetherAreThirtyKilobytesAtMost() {
        Map<String, byte[]> shared = ComparePage.shared();
        int bytes = shared.get("shared/page.js").length + shared.get("shared/compare.js").length;
        assertTrue(bytes <= 30_000, bytes + " bytes");
    }

    @Test
    void eachScoreIsHandedOverUnderItsOwnName() {
        String a = ComparedTune.before("test.musicxml", "A");
        assertTrue(ComparePage.of(ONE, null).contains("data-score=\"" + a + "\" data-other=\"0 1 2 3\""));
        assertTrue(ComparePage.scores(ONE).contains("\"" + a + "\":\"AQ==\""));
        assertNotEquals(a, ComparedTune.before("test.musicxml", "B"));
        assertNotEquals(a, ComparedTune.before("other.musicxml", "A"));
    }
}
