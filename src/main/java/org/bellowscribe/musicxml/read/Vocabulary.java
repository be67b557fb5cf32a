package org.bellowscribe.musicxml.read;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The elements and attributes that carry music for us, and what their values must look like. All else (layout, looks,
 * lyrics, sound fonts) is dropped before the score is read, so that it can do no harm.
 */
final class Vocabulary {

    private static final String ELEMENTS = """
            score-partwise: work movement-title credit part-list part
            work: work-title
            credit: credit-words
            part-list: score-part
            score-part: part-name
            part: measure
            measure: note backup forward direction attributes harmony sound barline
            note: grace cue chord pitch unpitched rest duration tie voice type dot time-modification notehead staff notations lyric
            pitch: step alter octave
            time-modification: actual-notes normal-notes
            notations: tied slur
            backup: duration
            forward: duration voice staff
            attributes: divisions key time clef transpose measure-style
            clef: sign
            key: fifths mode
            time: beats beat-type senza-misura
            transpose: chromatic octave-change
            measure-style: measure-repeat
            direction: direction-type offset sound
            direction-type: segno coda words metronome
            metronome: beat-unit beat-unit-dot per-minute
            sound: offset
            harmony: root function numeral kind inversion bass degree offset
            root: root-step root-alter
            bass: bass-step bass-alter
            numeral: numeral-root numeral-alter numeral-key
            numeral-key: numeral-fifths numeral-mode
            degree: degree-value degree-alter degree-type
            barline: bar-style segno coda ending repeat
            """;

    private static final String TEXTS = """
            work-title movement-title credit-words part-name divisions fifths mode beats beat-type senza-misura chromatic
            octave-change measure-repeat sign step alter octave duration voice type staff actual-notes normal-notes notehead
            words beat-unit per-minute kind function root-step root-alter bass-step bass-alter degree-value degree-alter
            degree-type inversion offset numeral-root numeral-alter numeral-fifths numeral-mode ending bar-style
            """;

    private static final String NUMBER = "[+-]?\\d{1,9}(\\.\\d{0,9})?|[+-]?\\.\\d{1,9}";
    private static final String POSITIVE = "\\d{1,9}(\\.\\d{0,9})?|\\.\\d{1,9}";
    private static final String COUNT = "\\d{1,4}";
    private static final String SUM = "\\d{1,3}(\\s{0,9}\\+\\s{0,9}\\d{1,3}){0,31}";
    private static final String SIGNED = "[+-]?\\d{1,3}";
    private static final String ANY = "(?s).*";
    private static final String NOTE_TYPE =
            "1024th|512th|256th|128th|64th|32nd|16th|eighth|quarter|half|whole|breve|long|maxima";

    /** Texts and attributes ({@code element@attribute}) with the form of their values; other attributes are dropped. */
    private static final String FORMS = """
            step [A-G]
            root-step [A-G]
            bass-step [A-G]
            alter NUMBER
            root-alter NUMBER
            bass-alter NUMBER
            numeral-alter NUMBER
            degree-alter NUMBER
            octave \\d
            duration POSITIVE
            divisions POSITIVE
            offset NUMBER
            staff COUNT
            actual-notes COUNT
            normal-notes COUNT
            inversion COUNT
            degree-value COUNT
            degree-type add|alter|subtract
            fifths SIGNED
            numeral-fifths SIGNED
            numeral-root [1-7]
            numeral-mode major|minor|natural minor|melodic minor|harmonic minor
            chromatic SIGNED
            octave-change SIGNED
            type NOTE_TYPE
            beat-unit NOTE_TYPE
            beats SUM
            beat-type SUM
            note@print-object yes|no
            key@number COUNT
            time@number COUNT
            transpose@number COUNT
            clef@number COUNT
            sign G|F|C|percussion|TAB|jianpu|none
            score-part@id ANY
            measure@number ANY
            tie@type start|stop
            tied@type start|stop|continue|let-ring
            slur@type start|stop|continue
            slur@number COUNT
            rest@measure yes|no
            measure-repeat@type start|stop
            bar-style regular|dotted|dashed|heavy|light-light|light-heavy|heavy-light|heavy-heavy|tick|short|none
            barline@location left|right|middle
            barline@segno ANY
            barline@coda ANY
            repeat@direction forward|backward
            repeat@times COUNT
            repeat@after-jump yes|no
            ending@type start|stop|discontinue
            ending@number ANY
            sound@tempo POSITIVE
            sound@dacapo yes|no
            sound@forward-repeat yes|no
            sound@segno ANY
            sound@dalsegno ANY
            sound@coda ANY
            sound@tocoda ANY
            sound@fine ANY
            sound@time-only ANY
            note@time-only ANY
            kind@text ANY
            harmony@type explicit|implied|alternate
            """;

    /** Values without which the music would be another. */
    private static final Set<String> VITAL = Set.of(
            "step",
            "alter",
            "octave",
            "duration",
            "divisions",
            "chromatic",
            "octave-change",
            "kind",
            "root-step",
            "root-alter",
            "bass-step",
            "bass-alter",
            "degree-value",
            "degree-alter",
            "degree-type",
            "numeral-root",
            "numeral-alter",
            "numeral-fifths",
            "numeral-mode");

    private static final Map<String, Set<String>> CHILDREN = children();
    private static final Set<String> ALL_CHILDREN =
            CHILDREN.values().stream().flatMap(Set::stream).collect(Collectors.toSet());
    private static final Set<String> TEXT_ELEMENTS = Set.of(TEXTS.strip().split("\\s+"));
    private static final Map<String, Pattern> PATTERNS = patterns();
    private static final Map<String, Set<String>> ATTRIBUTES = attributes();

    private Vocabulary() {}

    /** Returns true if the element is kept inside that parent (null for the root). */
    static boolean keeps(@Nullable String parent, String element) {
        return parent == null || CHILDREN.getOrDefault(parent, Set.of()).contains(element);
    }

    /** Returns true if the element carries music for us, whatever its parent. */
    static boolean isMusic(String element) {
        return CHILDREN.containsKey(element) || ALL_CHILDREN.contains(element);
    }

    static boolean isText(String element) {
        return TEXT_ELEMENTS.contains(element);
    }

    static boolean isVital(String element) {
        return VITAL.contains(element);
    }

    static boolean keepsAttribute(String element, String attribute) {
        return ATTRIBUTES.getOrDefault(element, Set.of()).contains(attribute);
    }

    /** Returns true if the value of an element, or of an attribute named {@code element@attribute}, has its form. */
    static boolean isValid(String name, String value) {
        if (name.equals("kind")) {
            // What is empty says nothing that could be wrong; its symbol is passed over later.
            return value.isEmpty() || KindTones.isKind(value);
        }
        Pattern form = PATTERNS.get(name);
        return form == null || form.matcher(value).matches();
    }

    private static Map<String, Set<String>> children() {
        Map<String, Set<String>> map = new HashMap<>();
        ELEMENTS.lines().forEach(line -> {
            int colon = line.indexOf(':');
            map.put(
                    line.substring(0, colon),
                    new HashSet<>(Set.of(line.substring(colon + 2).split(" "))));
        });
        return map;
    }

    private static Map<String, Pattern> patterns() {
        Map<String, String> named = Map.of(
                "NUMBER",
                NUMBER,
                "POSITIVE",
                POSITIVE,
                "COUNT",
                COUNT,
                "SIGNED",
                SIGNED,
                "ANY",
                ANY,
                "NOTE_TYPE",
                NOTE_TYPE,
                "SUM",
                SUM);
        Map<String, Pattern> map = new HashMap<>();
        FORMS.lines().forEach(line -> {
            int space = line.indexOf(' ');
            String form = line.substring(space + 1);
            map.put(line.substring(0, space), Pattern.compile(named.getOrDefault(form, form)));
        });
        return map;
    }

    private static Map<String, Set<String>> attributes() {
        return PATTERNS.keySet().stream()
                .filter(name -> name.contains("@"))
                .map(name -> name.split("@"))
                .collect(Collectors.groupingBy(
                        parts -> parts[0], Collectors.mapping(parts -> parts[1], Collectors.toUnmodifiableSet())));
    }
}
