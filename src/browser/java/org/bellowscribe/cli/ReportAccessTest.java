package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** Pages for those who have no mouse, no script, no wish for motion, or only paper. */
@Tag("browser")
class ReportAccessTest {

    @TempDir
    private static Path folder;

    private static Browser browser;

    @BeforeAll
    static void makeReport() {
        List<String> line = new ArrayList<>(List.of("mark", "--report", folder.toString()));
        for (String tune : List.of("the-leaning-gate", "the-ferrymans-hornpipe", "the-crooked-towpath", "out-and-in")) {
            line.add(Path.of("samples", "book", tune + ".musicxml").toString());
        }
        CommandRun run = CommandRun.of(line.toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static Path page(String tune) {
        return folder.resolve("tunes").resolve(tune + ".html");
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> seen(String script) {
        return (Map<String, Object>) browser.ask(script);
    }

    @Test
    void withoutScriptsTheCurveTheWordsAndTheRemarksAreThere() {
        browser.look(1280, "light");
        browser.openWithoutScripts(page("the-leaning-gate"));
        try {
            Map<String, Object> seen = seen("""
                    const shown = e => e.getClientRects().length > 0 && e.getBoundingClientRect().height > 5;
                    const all = what => [...document.querySelectorAll(what)];
                    return {
                      ran: 'live' in document.documentElement.dataset || document.documentElement.classList.contains('live'),
                      strips: all('.strip svg').filter(shown).length, drawn: all('.strip .push, .strip .pull').filter(e => e.getBoundingClientRect().width > 2).length,
                      rows: all('#steps tbody tr').filter(shown).length, words: document.querySelector('#s0').innerText,
                      remarks: shown(document.querySelector('#remarks')), why: all('#bellows li').filter(shown).length, buttons: all('.keys .used').filter(shown).length,
                      cut: all('.scroll').filter(e => e.scrollHeight > e.clientHeight + 1).length, dead: all('button, input, select, #score').filter(shown).length
                    }""");
            assertEquals(false, seen.get("ran"));
            assertEquals(4L, seen.get("strips"));
            assertTrue((Long) seen.get("drawn") > 20, seen.toString());
            assertEquals(40L, seen.get("rows"));
            assertTrue(((String) seen.get("words")).contains("button"), seen.toString());
            assertEquals(true, seen.get("remarks"));
            assertTrue((Long) seen.get("why") > 0, seen.toString());
            assertTrue((Long) seen.get("buttons") > 5, seen.toString());
            assertEquals(0L, seen.get("cut"), "the table of words is cut off");
            assertEquals(0L, seen.get("dead"), "controls that do nothing are shown");
        } finally {
            browser.allowScripts();
        }
    }

    /** Goes through a page with the tabulator and tells of every stop. */
    private static List<Map<String, Object>> stops(int most) {
        List<Map<String, Object>> stops = new ArrayList<>();
        browser.ask("scrollTo(0, 0); document.activeElement.blur()");
        for (int i = 0; i < most; i++) {
            browser.press(Keys.TAB);
            Map<String, Object> stop = seen("""
                    const e = document.activeElement;
                    if (e === document.body || e.dataset.seen) return {what: ''};
                    e.dataset.seen = 1;
                    const style = getComputedStyle(e), box = e.getBoundingClientRect(), bar = document.getElementById('player');
                    const covered = bar && !bar.contains(e) && box.top >= bar.getBoundingClientRect().top;
                    return {
                      what: e.id || e.getAttribute('href') || e.textContent.trim(), outline: style.outlineStyle, width: parseFloat(style.outlineWidth),
                      inside: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth, covered
                    }""");
            if ("".equals(stop.get("what"))) {
                break;
            }
            stops.add(stop);
        }
        return stops;
    }

    private static void assertEachStopIsSeen(List<Map<String, Object>> stops) {
        for (Map<String, Object> stop : stops) {
            assertEquals("solid", stop.get("outline"), stop.toString());
            assertTrue(((Number) stop.get("width")).doubleValue() >= 2, stop.toString());
            assertEquals(true, stop.get("inside"), stop.toString());
            assertTrue(!Boolean.TRUE.equals(stop.get("covered")), stop.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1280, 360})
    void theTabulatorComesToEverythingAndIsSeenThere(int width) {
        browser.look(width, "light");
        // A page that still scrolls would be looked at too early.
        browser.stillness(true);
        browser.openTune(page("the-leaning-gate"));
        browser.ask("document.getElementById('how').open = true");
        List<Map<String, Object>> stops = stops(200);
        List<Object> names = stops.stream().map(stop -> stop.get("what")).toList();
        for (String name : List.of(
                "#words", "../index.html", "score", "#s0", "back", "play", "stop", "next", "place", "tempo", "from", "to", "this", "all",
                "loop", "hands", "count")) {
            assertTrue(names.contains(name), name + " is not in " + names);
        }
        assertEachStopIsSeen(stops);
    }

    @Test
    void theIndexIsReachedByTheKeyboardToo() {
        browser.look(1280, "dark");
        browser.stillness(true);
        browser.open(folder.resolve("index.html"));
        List<Map<String, Object>> stops = stops(100);
        assertTrue(stops.size() >= 4 + 7 + 1, stops.toString());
        assertEachStopIsSeen(stops);
        browser.keys("#tunes thead th:nth-child(2) button", Keys.ENTER);
        assertEquals("ascending", browser.ask("return document.querySelector('#tunes th:nth-child(2)').getAttribute('aria-sort')"));
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void nothingMovesForThoseWhoWantNoMotion(boolean wanted) {
        browser.stillness(wanted);
        try {
            browser.openTune(page("the-leaning-gate"));
            long moving = (Long) browser.ask("""
                    return [document.documentElement, ...document.querySelectorAll('*')].filter(e => {
                      const style = getComputedStyle(e);
                      return style.scrollBehavior === 'smooth' || style.animationName !== 'none' || style.transitionDuration.split(',').some(t => parseFloat(t) > 0);
                    }).length""");
            assertEquals(wanted, moving == 0, moving + " elements move");
        } finally {
            browser.stillness(false);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"the-leaning-gate", "the-ferrymans-hornpipe", "the-crooked-towpath", "out-and-in"})
    void aTuneIsPrintedOnOneSheet(String tune) {
        browser.look(1280, "light");
        browser.openTune(page(tune));
        assertEquals(1, browser.sheets());
    }
}
