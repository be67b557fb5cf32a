package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;

/** The page of {@code compare --blind} in a real browser, opened from disk. */
@Tag("browser")
class CompareInBrowserTest {

    private static final String TITLE = "<b>\"Tea\"</b> & 'Toast' 🎵 שלום";

    @TempDir
    private static Path folder;

    private static Browser browser;
    private static Path page;

    @BeforeAll
    static void compare() throws IOException {
        Path scores = Files.createDirectories(folder.resolve("scores"));
        Path sample = Path.of("samples", "book", "the-leaning-gate.musicxml");
        Files.copy(sample, scores.resolve("gate.musicxml"));
        String title = TITLE.replace("&", "&amp;").replace("<", "&lt;");
        Files.writeString(scores.resolve("odd.musicxml"), Files.readString(sample).replace("The Leaning Gate", title));
        Path out = folder.resolve("out");
        CommandRun run = CommandRun.of(
                "compare", scores.toString(), "--between", "along-the-row,across-the-rows", "--blind", "3", "--out", out.toString());
        assertEquals(0, run.code(), run.err());
        page = out.resolve("compare.html");
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private static void open() {
        browser.look(1280, "light");
        browser.openTune(page);
        browser.ask("localStorage.clear(); addEventListener('beforeunload', e => e.stopImmediatePropagation(), true)");
    }

    private static String text(String selector) {
        return (String) browser.ask("return document.querySelector(arguments[0]).textContent", selector);
    }

    /** Scores are engraved as one comes to them. */
    private static void engrave(int scores) {
        for (int i = 0; i < scores; i++) {
            browser.ask("document.querySelectorAll('.engraved')[arguments[0]].scrollIntoView({behavior: 'instant'})", i);
            browser.until("return document.querySelectorAll('.engraved')[%d].querySelector('.page svg') !== null".formatted(i));
        }
        browser.ask("scrollTo({top: 0, behavior: 'instant'})");
    }

    @Test
    void bothWaysAreEngravedAndWhatDiffersIsBoldInBoth() {
        open();
        engrave(2);
        for (int way = 1; way <= 2; way++) {
            Object wrong = browser.ask("""
                    const score = document.querySelector('#tune-1 .way:nth-child(' + arguments[0] + ') .engraved');
                    const due = score.dataset.other.split(' ').map(i => score.dataset.score + 'n' + i);
                    const bold = [...score.querySelectorAll('.differs')].filter(e => [...e.querySelectorAll('text')].every(t => +getComputedStyle(t).fontWeight >= 700));
                    return due.filter(id => !bold.some(e => e.id === id)).concat(bold.map(e => e.id).filter(id => !due.includes(id.replace(/-\\d+$/, '')) && !due.includes(id)));
                    """, way);
            assertEquals(List.of(), wrong, "way " + way);
        }
        assertTrue(((String) browser.ask("return document.querySelector('.engraved').dataset.other")).contains(" "));
    }

    /** A page tells the ways apart by the buttons under the notes, which must be those of its own table. */
    @Test
    void eachScoreIsThatOfItsWay() {
        open();
        engrave(2);
        assertEquals(List.of(), browser.ask("""
                const wrong = [];
                document.querySelectorAll('#tune-1 .way').forEach((way, i) => {
                  const score = way.querySelector('.engraved'), row = [...document.querySelectorAll('#tune-1 .measures table')].flatMap(t => [...t.tBodies[0].rows[i].cells].slice(1));
                  row.forEach((cell, n) => {
                    const button = cell.querySelector('div').textContent.trim().split('.')[1], verse = score.querySelector('[id="' + score.dataset.score + 'n' + n + '"] g.verse');
                    if (button && !(verse && verse.textContent.includes(button))) wrong.push(i + ':' + n);
                  });
                });
                return wrong;"""));
    }

    @Test
    void nothingTellsWhichWayIsWhich() throws IOException {
        assertFalse(Files.readString(page).contains("across-the-rows"));
        assertFalse(Files.readString(page.resolveSibling("compare-scores.js")).contains("across-the-rows"));
        assertTrue(Files.readString(page.resolveSibling("key.csv")).contains("across-the-rows"));
    }

    @Test
    void titlesAreText() {
        open();
        Object titles = browser.ask("return [...document.querySelectorAll('nav a')].map(a => a.textContent)");
        assertTrue(((List<?>) titles).contains(TITLE), titles.toString());
    }

    @Test
    void choiceAndRemarkAreSavedAsRowsAndKeptOverANewStart() throws Exception {
        open();
        Path saved = Files.createDirectories(folder.resolve("saved"));
        browser.saveInto(saved);
        browser.click("#tune-1 input[value='B']");
        browser.keys("#tune-1 textarea", "smoother, \"easier\"\nto hold");
        browser.keys("#tune-2 input[value='A']", Keys.SPACE);
        browser.keys("#tune-2 textarea", "=1+1");
        browser.keys("#judge", "Ada");
        assertEquals("2 of 2 chosen, not saved as a file yet.", text("#state"));
        browser.click("#save-button");
        Path file = saved.resolve("choices-3.csv");
        for (int i = 0; i < 100 && !Files.exists(file); i++) {
            Thread.sleep(100);
        }
        List<Object> first = row("#tune-1");
        List<Object> second = row("#tune-2");
        assertEquals(
                "judge,seed,place,file,title,a,b,choice,remark\r\n"
                        + "Ada,3,1,%s,%s,,,B,\"smoother, \"\"easier\"\"\nto hold\"\r\n".formatted(first.get(0), quoted(first.get(1)))
                        + "Ada,3,2,%s,%s,,,A,'=1+1\r\n".formatted(second.get(0), quoted(second.get(1))),
                Files.readString(file));
        assertEquals("2 of 2 chosen.", text("#state"));
        browser.openTune(page);
        assertEquals(true, browser.ask("return document.querySelector(\"#tune-1 input[value='B']\").checked"));
        assertEquals("=1+1", browser.ask("return document.querySelector('#tune-2 textarea').value"));
        assertNotEquals(first.get(0), second.get(0));
    }

    @SuppressWarnings("unchecked")
    private static List<Object> row(String tune) {
        return (List<Object>) browser.ask(
                "const data = document.querySelector(arguments[0]).dataset; return [data.file, data.title]", tune);
    }

    private static String quoted(Object text) {
        String words = text.toString();
        return words.matches("(?s).*[\",\r\n].*") ? "\"" + words.replace("\"", "\"\"") + "\"" : words;
    }

    @Test
    void nothingIsToldToTheConsoleAndNothingAskedOfANetwork() {
        browser.console();
        browser.requests();
        open();
        engrave(4);
        assertEquals(List.of(), browser.console());
        assertEquals(List.of(), browser.requests());
    }

    @ParameterizedTest
    @CsvSource({"1280,light", "1280,dark", "360,light", "360,dark"})
    void nothingStandsInTheWayOfAnybody(int width, String scheme) throws IOException {
        browser.look(width, scheme);
        browser.openTune(page);
        browser.ask("document.querySelectorAll('details').forEach(d => d.open = true)");
        engrave(4);
        assertEquals(List.of(), browser.obstacles(), width + " " + scheme);
        assertEquals(true, browser.ask("return document.documentElement.scrollWidth <= innerWidth"), "it scrolls sideways");
    }

    @Test
    void eachTuneIsPrintedOnASheetOfItsOwn() {
        open();
        assertEquals(2, browser.sheets());
    }
}
