package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/**
 * The player of a page: what it hands to the sound of the browser, note by note, while it plays. The Leaning Gate has 16
 * measures of three quarters at 144 a minute; measures 1 to 8 are played twice.
 */
@Tag("browser")
class ReportPlayerTest {

    private static final double QUARTER = 60.0 / 144;
    private static final double CLOSE = 1e-3;

    @TempDir
    private static Path folder;

    private static Browser browser;
    private static Path gate;

    @BeforeAll
    static void makeReport() {
        String score = Path.of("samples", "book", "the-leaning-gate.musicxml").toString();
        CommandRun run = CommandRun.of("mark", score, "--report", folder.toString());
        assertEquals(0, run.code(), run.err());
        gate = folder.resolve("tunes").resolve("the-leaning-gate.html");
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    /** Writes down whatever begins to sound: when, which pitch, how far out of tune; a noise has pitch 0, a click is pure. */
    @BeforeEach
    void listen() {
        browser.look(1280, "light");
        browser.openTune(gate);
        browser.ask("""
                window.heard = [];
                const write = (node, name) => {
                  const start = node.start;
                  node.start = function(at) {
                    heard.push([name, at, node.frequency ? Math.round(69 + 12 * Math.log2(node.frequency.value / 440)) : 0, node.detune ? node.detune.value : 0]);
                    return start.apply(this, arguments);
                  };
                  return node;
                };
                for (const [maker, name] of [["createOscillator", "tone"], ["createBufferSource", "noise"]]) {
                  const make = BaseAudioContext.prototype[maker];
                  BaseAudioContext.prototype[maker] = function() { return write(make.apply(this, arguments), name); };
                }""");
    }

    private static void set(String id, Object value) {
        browser.ask(
                """
                const e = document.getElementById(arguments[0]);
                if (e.type === 'checkbox') e.checked = arguments[1]; else e.value = arguments[1];
                e.dispatchEvent(new Event('input', {bubbles: true}));
                e.dispatchEvent(new Event('change', {bubbles: true}));""",
                id,
                value);
    }

    /** What was heard: when, and its MIDI number. */
    private record Heard(String what, double at, int pitch, double detune) {

        boolean isClick() {
            return what.equals("tone") && detune == 0;
        }

        boolean isReed() {
            return what.equals("tone") && detune != 0;
        }
    }

    /** Plays for some seconds, and returns what began to sound. */
    private static List<Heard> play(double seconds) {
        browser.click("#play");
        @SuppressWarnings("unchecked")
        List<List<Object>> all = (List<List<Object>>) browser.await(
                "setTimeout(() => { bellowscribePage.player.stop(); arguments[1](heard); }, arguments[0] * 1000)", seconds);
        List<Heard> heard = new ArrayList<>();
        for (List<Object> each : all) {
            heard.add(new Heard((String) each.get(0), number(each.get(1)), (int) number(each.get(2)), number(each.get(3))));
        }
        return heard;
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    /** The moments in which reeds begin, each once, with the pitches of those of one ear. */
    private static Map<Double, List<Integer>> reeds(List<Heard> heard) {
        Map<Double, List<Integer>> moments = new TreeMap<>();
        heard.stream()
                .filter(each -> each.isReed() && each.detune() > 0)
                .forEach(each -> moments.computeIfAbsent(Math.rint(each.at() * 1000) / 1000, at -> new ArrayList<>())
                        .add(each.pitch()));
        return moments;
    }

    private static void measure(int from, int to) {
        set("from", String.valueOf(from - 1));
        set("to", String.valueOf(to - 1));
    }

    @SuppressWarnings("unchecked")
    private static List<Number> numbers(String script) {
        return (List<Number>) browser.ask(script);
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 100, 120})
    void tempoIsThatOfTheSlider(int percent) {
        set("count", false);
        set("hands", "1");
        set("tempo", String.valueOf(percent));
        measure(1, 2);
        List<Double> starts = new ArrayList<>(reeds(play(3.5 * QUARTER * 100 / percent)).keySet());
        List<Number> lengths = numbers("return bellowscribePage.plays.slice(0, 3).map(play => play.step.length)");
        assertEquals(percent + " %", browser.ask("return document.getElementById('percent').textContent"));
        for (int i = 0; i < 2; i++) {
            double due = lengths.get(i).doubleValue() * QUARTER * 100 / percent;
            assertEquals(due, starts.get(i + 1) - starts.get(i), 2 * CLOSE);
        }
    }

    @Test
    void aMeasureIsCountedInAtTheTempoChosen() {
        set("tempo", "120");
        measure(3, 3);
        List<Heard> heard = play(4 * QUARTER / 1.2);
        List<Heard> clicks = heard.stream().filter(Heard::isClick).toList();
        assertEquals(3, clicks.size());
        assertTrue(clicks.get(0).pitch() > clicks.get(1).pitch());
        for (int i = 1; i < 3; i++) {
            assertEquals(QUARTER / 1.2, clicks.get(i).at() - clicks.get(i - 1).at(), CLOSE);
        }
        double first = heard.stream()
                .filter(Heard::isReed)
                .mapToDouble(Heard::at)
                .min()
                .orElseThrow();
        assertEquals(QUARTER / 1.2, first - clicks.get(2).at(), 0.01);
    }

    @Test
    void whileBeatsAreCountedInTheChosenNoteStays() throws InterruptedException {
        browser.ask("const place = document.getElementById('place'); place.value = 12; place.oninput();");
        browser.ask("document.getElementById('play').click();");
        Thread.sleep((long) (1000 * QUARTER));
        browser.ask("document.getElementById('play').click();");
        assertEquals("12", browser.ask("return document.getElementById('place').value"));
    }

    @Test
    void withoutCountInNothingIsCounted() {
        set("count", false);
        assertEquals(0, play(QUARTER).stream().filter(Heard::isClick).count());
    }

    @Test
    void chosenMeasuresComeAgainAndAgainWithoutAGap() {
        set("count", false);
        set("hands", "1");
        set("tempo", "120");
        set("loop", true);
        measure(4, 4);
        double round = 3 * QUARTER / 1.2;
        Map<Double, List<Integer>> reeds = reeds(play(2.5 * round));
        List<Double> starts = new ArrayList<>(reeds.keySet());
        int notes = numbers("return [bellowscribePage.plays.filter(p => p.step.measure === 3).length / 2]")
                .get(0)
                .intValue();
        assertTrue(starts.size() > 2 * notes, starts.toString());
        for (int i = notes; i < starts.size(); i++) {
            assertEquals(round, starts.get(i) - starts.get(i - notes), 2 * CLOSE);
            assertEquals(reeds.get(starts.get(i - notes)), reeds.get(starts.get(i)));
        }
    }

    @Test
    void whatIsNotLoopedEndsWithItsLastMeasure() {
        set("count", false);
        set("tempo", "120");
        measure(2, 2);
        play(4.5 * QUARTER / 1.2);
        assertEquals("Play", browser.ask("return document.getElementById('play').textContent"));
        Object measure = browser.ask(
                "return bellowscribePage.plays.find(p => 's' + p.step.id === document.querySelector('#steps [aria-current]').id).step.measure");
        assertEquals(1L, measure);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "2", "3"})
    void eachHandIsHeardAloneOrBothTogether(String hands) {
        set("count", false);
        set("hands", hands);
        set("tempo", "120");
        measure(1, 1);
        List<Integer> heard = reeds(play(3 * QUARTER)).values().stream()
                .flatMap(List::stream)
                .sorted()
                .toList();
        // Two reeds for each melody note, each of one octave; a bass also an octave higher.
        List<Integer> due = numbers("""
                const data = window.bellowscribe, hands = %s, due = [];
                for (const play of bellowscribePage.plays.filter(p => p.k < data.order[1][2])) {
                  if (hands & 1 && !play.step.held) for (const p of play.step.pitches) for (const v of new Set(data.voices)) due.push(p + 12 * v);
                  if (hands & 2) for (const s of play.step.left) due.push(...(s[2].length > 1 ? s[2] : [s[2][0], s[2][0] + 12]));
                }
                return due;""".formatted(hands)).stream()
                .map(Number::intValue)
                .sorted()
                .toList();
        assertTrue(due.size() >= 3, due.toString());
        assertEquals(due, heard);
    }

    @Test
    void airIsHeardAsANoiseWhereItIsPressed() {
        set("count", false);
        set("hands", "1");
        set("tempo", "120");
        Number bar = numbers("""
                const k = bellowscribePage.plays.findIndex(p => p.step.air);
                return [window.bellowscribe.order.findLastIndex(each => each[2] <= k) + 1]""").get(0);
        measure(bar.intValue(), bar.intValue());
        List<Heard> heard = play(3 * QUARTER);
        List<Heard> noises =
                heard.stream().filter(each -> each.what().equals("noise")).toList();
        List<Number> due = numbers("""
                const [a, z] = bellowscribePage.player.range();
                return bellowscribePage.plays.slice(a, z).filter(p => p.step.air).map(p => p.start - bellowscribePage.plays[a].start)""");
        assertEquals(due.size(), noises.size());
        double first = reeds(heard).keySet().iterator().next();
        for (int i = 0; i < due.size(); i++) {
            assertEquals(due.get(i).doubleValue() * QUARTER / 1.2, noises.get(i).at() - first, 2 * CLOSE);
        }
    }

    @Test
    void theKeyboardPlaysAndStops() {
        browser.keys("#play", Keys.ENTER);
        assertEquals(true, browser.ask("return bellowscribePage.player.on"));
        browser.keys("#stop", Keys.SPACE);
        assertEquals(false, browser.ask("return bellowscribePage.player.on"));
        assertEquals("0", browser.ask("return document.getElementById('place').value"));
    }
}
