package org.bellowscribe.musicxml.read;

import static org.bellowscribe.musicxml.read.ScoreText.notes;
import static org.bellowscribe.musicxml.read.ScoreText.score;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Scores damaged at random end in a tune or in remarks, never in another exception. */
class MutatedScoreTest {

    private static final String ROAD = "<barline location=\"left\"><ending number=\"1\" type=\"start\"/>"
            + "<repeat direction=\"forward\"/></barline>%s<direction><direction-type><words>To Coda</words><coda/>"
            + "</direction-type><sound tocoda=\"c\" fine=\"yes\"/></direction><barline location=\"right\">"
            + "<ending number=\"1\" type=\"stop\"/><repeat direction=\"backward\" times=\"2\"/></barline>";
    private static final String CHORDS = "<harmony><root><root-step>G</root-step><root-alter>0</root-alter></root>"
            + "<kind text=\"7\">dominant</kind><inversion>1</inversion><degree><degree-value>9</degree-value>"
            + "<degree-alter>-1</degree-alter><degree-type>add</degree-type></degree></harmony>"
            + "<direction><direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>90</per-minute></metronome>"
            + "</direction-type><offset>2</offset><sound tempo=\"90\" dacapo=\"yes\"/></direction>";
    private static final String SCORE = score(
            "<attributes><transpose><chromatic>-2</chromatic><octave-change>1</octave-change></transpose></attributes>"
                    + CHORDS + notes("D5:4< D5:4> F#5:4 +A5:4 r:4"),
            ROAD.formatted(notes("D5:16")),
            ScoreText.note("Eb5:8", "<voice>1</voice><type>half</type><staff>1</staff>")
                    + "<backup><duration>8</duration></backup><forward><duration>8</duration></forward>"
                    + notes("C4:8"));

    private static final Pattern VALUE = Pattern.compile(">([^<>]+)</|=\"([^\"]*)\"");
    private static final Pattern LEAF = Pattern.compile("<([a-z-]+)[^<>]*>[^<>]*</\\1>|<[a-z-]+[^<>]*/>");
    private static final List<String> JUNK = List.of(
            "",
            "-1",
            "0",
            "x",
            "999999999",
            "0.000001",
            "1e9",
            "NaN",
            "3.5",
            "stop",
            "start",
            "1-99",
            "-999",
            "none",
            "7");

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void damagedScoreIsReadOrRefused(int seed) {
        Random random = new Random(seed);
        String text = SCORE;
        for (int i = random.nextInt(4); i >= 0; i--) {
            text = mutate(text, random);
        }
        try {
            Tune tune = ScoreReader.read(text, "damaged", ReadingOptions.DEFAULT);
            assertTrue(tune.events().stream().allMatch(MutatedScoreTest::isSound), text);
            assertFalse(tune.playOrder().measures().isEmpty(), text);
        } catch (DiagnosedException e) {
            assertFalse(e.diagnostics().isEmpty(), text);
        }
    }

    private static boolean isSound(Event event) {
        return event.duration().isPositive()
                && (event.isRest()
                        || event.pitches().size() == event.noteIndices().size());
    }

    private static String mutate(String text, Random random) {
        String junk = JUNK.get(random.nextInt(JUNK.size()));
        List<int[]> places = places(random.nextInt(3) == 0 ? LEAF : VALUE, text);
        int[] place = places.get(random.nextInt(places.size()));
        boolean leaf = text.charAt(place[0]) == '<';
        return text.substring(0, place[0]) + (leaf ? "" : junk) + text.substring(place[1]);
    }

    private static List<int[]> places(Pattern pattern, String text) {
        List<int[]> places = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            int group = pattern == LEAF ? 0 : matcher.group(1) != null ? 1 : 2;
            places.add(new int[] {matcher.start(group), matcher.end(group)});
        }
        return places;
    }
}
