package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;

/**
 * The pages of a report in a real browser, opened from disk: {@code mvn -B test -Dmeasure=browser}, with the Debian packages
 * chromium and chromium-driver, else skipped.
 */
@Tag("browser")
class ReportInBrowserTest {

    private static final String ODD_TITLE = "<script>window.hacked=1</script> \"Tea\" & 'Toast' 🎵 שלום";

    @TempDir
    private static Path folder;

    private static Path gate;
    private static Path odd;
    private static Browser browser;

    @BeforeAll
    static void makeReport() throws IOException {
        Path scores = Files.createDirectories(folder.resolve("scores"));
        Path sample = Path.of("samples", "book", "the-leaning-gate.musicxml");
        Files.copy(sample, scores.resolve("gate.musicxml"));
        String title = ODD_TITLE.replace("&", "&amp;").replace("<", "&lt;");
        Files.writeString(scores.resolve("odd #1 100%.musicxml"), Files.readString(sample).replace("The Leaning Gate", title));
        Path report = folder.resolve("report");
        CommandRun run = CommandRun.of("mark", scores.toString(), "--report", report.toString(), "--report-reasons", "4");
        assertEquals(0, run.code(), run.err());
        gate = report.resolve("tunes").resolve("gate.html");
        odd = report.resolve("tunes").resolve("odd #1 100%.html");
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static void open(Path page) {
        browser.look(1280, "light");
        browser.openTune(page);
    }

    /** Every view must show the same play: asked of the elements themselves, each by what it alone shows. */
    private static void assertAllViewsShow(int play) {
        @SuppressWarnings("unchecked")
        Map<String, Object> seen = (Map<String, Object>) browser.ask("""
                const data = window.bellowscribe, step = data.plays[arguments[0]], row = document.querySelector('#steps [aria-current]');
                const strip = [...document.querySelectorAll('.strip')].filter(s => +s.querySelector('.cursor').getAttribute('width') > 0);
                return {
                  row: row && row.id, words: document.getElementById('what').textContent === row.cells[1].textContent,
                  score: [...document.querySelectorAll('#score g.sounding')].map(g => g.id).join(),
                  keys: [...document.querySelectorAll('[data-key].on')].map(k => k.dataset.key).sort().join(),
                  wanted: data.steps[step][5].map(b => 'r' + b).concat(data.steps[step][7].map(l => 'l' + l[3])).filter((k, i, all) => all.indexOf(k) === i).sort().join(),
                  strips: strip.length, inside: strip.length && +strip[0].dataset.a <= arguments[0] && arguments[0] < +strip[0].dataset.z,
                  place: +document.getElementById('place').value, step
                }""", play);
        assertEquals("s" + seen.get("step"), seen.get("row"));
        assertEquals("n" + seen.get("step"), seen.get("score"));
        assertEquals(seen.get("wanted"), seen.get("keys"));
        assertEquals(true, seen.get("words"));
        assertEquals(1L, seen.get("strips"));
        assertEquals(true, seen.get("inside"));
        assertEquals((long) play, seen.get("place"));
    }

    @Test
    void aClickOnANoteOfTheScoreShowsItEverywhere() {
        open(gate);
        browser.click("#n7 .notehead");
        assertAllViewsShow(7);
    }

    @Test
    void aClickOnARowShowsItsNoteEverywhere() {
        open(gate);
        browser.click("#s4 td");
        assertAllViewsShow(4);
    }

    @Test
    void aTapOnTheCurveShowsTheNoteOfThatMoment() {
        browser.look(360, "light");
        browser.openTune(gate);
        browser.click(".strip:nth-of-type(2) svg");
        // The middle of the drawing is 44 percent of eight measures: the first note of measure 4, a half, in the second playing.
        assertAllViewsShow(((Long) browser.ask("return window.bellowscribe.order[11][2]")).intValue());
    }

    @Test
    void aButtonShowsItsNextNote() {
        open(gate);
        browser.click("[data-key='r1.7'] td");
        assertAllViewsShow(1);
    }

    @Test
    void keysChooseNotesInScoreAndTable() {
        open(gate);
        browser.keys("#score", Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        assertAllViewsShow(2);
        browser.keys("#steps [aria-current] a", Keys.ARROW_DOWN, Keys.ARROW_DOWN, Keys.ARROW_UP);
        assertAllViewsShow(3);
        browser.keys("#score", Keys.END);
        assertAllViewsShow(((Long) browser.ask("return window.bellowscribe.plays.length - 1")).intValue());
        browser.keys("#place", Keys.HOME);
        assertAllViewsShow(0);
    }

    @Test
    void theSecondPlayingIsChosenFromTheSecondPlaying() {
        open(gate);
        int again = ((Long) browser.ask("return window.bellowscribe.plays.indexOf(3, 10)")).intValue();
        browser.ask("bellowscribePage.choose(arguments[0])", again - 2);
        browser.click("#n3 .notehead");
        assertAllViewsShow(again);
    }

    @Test
    void aPricedNoteTellsItsPrices() {
        open(gate);
        browser.click("#reasons summary");
        long step = (Long) browser.ask("const d = document.querySelector('#reasons details'); return +d.dataset.step");
        browser.click("#s" + step + " td");
        assertTrue((Boolean) browser.ask("return document.querySelector('#why table tbody').rows.length > 3"));
    }

    @Test
    void theScoreShowsEachButtonUnderItsNote() {
        open(gate);
        assertEquals(List.of(), browser.ask("""
                return window.bellowscribe.steps.filter((step, i) => {
                  const verse = document.querySelector('#score #n' + i + ' g.verse');
                  return !verse || !verse.textContent.includes(step[5][0].split('.')[1]);
                })"""));
    }

    @Test
    void titlesAreTextWhateverTheyHold() {
        open(odd);
        assertEquals(ODD_TITLE, browser.ask("return document.querySelector('h1').textContent"));
        browser.open(odd.getParent().resolveSibling("index.html"));
        assertEquals(ODD_TITLE, browser.ask("return document.querySelector('#tunes tbody tr:last-child th').textContent"));
        assertEquals(null, browser.ask("return window.hacked"));
        browser.click("#tunes tbody tr:last-child a");
        assertEquals(ODD_TITLE, browser.ask("return document.querySelector('h1').textContent"));
    }

    @Test
    void theIndexIsSortedAndSearched() {
        browser.look(1280, "light");
        browser.open(odd.getParent().resolveSibling("index.html"));
        Object first = browser.ask("return document.querySelector('#tunes tbody th').textContent");
        browser.click("#tunes thead th:first-child button");
        browser.click("#tunes thead th:first-child button");
        assertEquals("descending", browser.ask("return document.querySelector('#tunes thead th').getAttribute('aria-sort')"));
        assertEquals(first, browser.ask("return document.querySelector('#tunes tbody th').textContent"));
        browser.keys("#sought", "toast");
        assertEquals("1 of 2", browser.ask("return document.getElementById('hits').textContent"));
    }

    @Test
    void nothingIsToldToTheConsoleAndNothingAskedOfANetwork() {
        browser.console();
        browser.requests();
        open(gate);
        browser.click("#play");
        browser.click("#stop");
        browser.open(gate.getParent().resolveSibling("index.html"));
        assertEquals(List.of(), browser.console());
        assertEquals(List.of(), browser.requests());
    }

    @ParameterizedTest
    @CsvSource({"1280,light", "1280,dark", "360,light", "360,dark"})
    void nothingStandsInTheWayOfAnybody(int width, String scheme) throws IOException {
        browser.look(width, scheme);
        for (Path page : List.of(gate, gate.getParent().resolveSibling("index.html"))) {
            if (page.equals(gate)) {
                browser.openTune(page);
                browser.ask("document.getElementById('how').open = true; document.querySelectorAll('details').forEach(d => d.open = true)");
            } else {
                browser.open(page);
            }
            assertEquals(List.of(), browser.obstacles(), page + " " + width + " " + scheme);
            assertEquals(true, browser.ask("return document.documentElement.scrollWidth <= innerWidth"), page + " scrolls sideways");
        }
    }

    @Test
    void playingMovesThePlaceInStep() throws InterruptedException {
        open(gate);
        browser.ask("document.getElementById('count').checked = false; document.getElementById('play').click()");
        @SuppressWarnings("unchecked")
        List<List<Number>> seen = (List<List<Number>>) browser.await("""
                const done = arguments[arguments.length - 1], {player, plays} = bellowscribePage, seen = [];
                const quarters = () => player.context.currentTime * window.bellowscribe.quarters / 60;
                const first = {least: quarters(), place: player.position(), most: quarters()};
                const look = () => {
                  const row = document.querySelector('#steps [aria-current]').id.slice(1);
                  const before = quarters(), at = player.position(), after = quarters();
                  const due = plays.filter(p => p.start <= at).pop();
                  if (due) seen.push([+row, due.step.id, before - first.most, at - first.place, after - first.least, at - due.start]);
                  if (seen.length < 60) requestAnimationFrame(look); else { player.stop(); done(seen); }
                };
                requestAnimationFrame(look)""");
        for (List<Number> look : seen) {
            // The clock of the sound may go on while it is read.
            double at = look.get(3).doubleValue();
            assertTrue(at >= look.get(2).doubleValue() - 1e-6 && at <= look.get(4).doubleValue() + 1e-6, look.toString());
            // A frame after the note is due it is shown.
            if (look.get(5).doubleValue() > 0.25) {
                assertEquals(look.get(1).intValue(), look.get(0).intValue());
            }
        }
        assertNotEquals(seen.get(0).get(0), seen.get(seen.size() - 1).get(0));
    }
}
