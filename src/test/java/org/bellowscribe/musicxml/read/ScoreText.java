package org.bellowscribe.musicxml.read;

import java.util.List;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Tune;
import org.junit.jupiter.api.Assertions;

/** Writes small scores for tests and reads them. */
final class ScoreText {

    /** Divisions 4, key of one sharp, 4/4. */
    static final String ATTRIBUTES = """
            <attributes><divisions>4</divisions><key><fifths>1</fifths><mode>major</mode></key>
            <time><beats>4</beats><beat-type>4</beat-type></time></attributes>
            """;

    private ScoreText() {}

    /** Returns a score of one part from the insides of its measures; the first begins with {@link #ATTRIBUTES}. */
    static String score(String... measures) {
        measures[0] = ATTRIBUTES + measures[0];
        return bare(measures);
    }

    /** Returns a score of one part from the insides of its measures. */
    static String bare(String... measures) {
        return wrap("<part-list><score-part id=\"P1\"><part-name>Tune</part-name></score-part></part-list>"
                + part("P1", measures));
    }

    static String part(String id, String... measures) {
        StringBuilder part = new StringBuilder("<part id=\"" + id + "\">");
        for (int i = 0; i < measures.length; i++) {
            part.append("<measure number=\"").append(i + 1).append("\">");
            part.append(measures[i]).append("</measure>\n");
        }
        return part.append("</part>").toString();
    }

    static String wrap(String content) {
        return "<?xml version=\"1.0\"?>\n<score-partwise version=\"4.0\"><work><work-title>Harvest Reel</work-title></work>"
                + content + "</score-partwise>";
    }

    /**
     * Returns notes from words such as {@code D5:4} (pitch and duration), {@code r:4} for a rest; {@code +} before it
     * makes it a chord note, {@code <} behind it a tie to the next note, {@code >} a tie from the one before.
     */
    static String notes(String words) {
        StringBuilder notes = new StringBuilder();
        Stream.of(words.split(" +")).forEach(word -> notes.append(note(word, "")));
        return notes.toString();
    }

    /** Returns one note, with more elements inside after its duration. */
    static String note(String word, String more) {
        boolean chord = word.startsWith("+");
        String plain = word.replaceAll("[+<>]", "");
        String[] pitchAndDuration = plain.split(":");
        return "<note>" + (chord ? "<chord/>" : "") + pitch(pitchAndDuration[0]) + "<duration>" + pitchAndDuration[1]
                + "</duration>" + (word.contains(">") ? "<tie type=\"stop\"/>" : "")
                + (word.contains("<") ? "<tie type=\"start\"/>" : "") + more + "</note>\n";
    }

    private static String pitch(String name) {
        if (name.equals("r")) {
            return "<rest/>";
        }
        String alter = name.contains("#") ? "<alter>1</alter>" : name.contains("b") ? "<alter>-1</alter>" : "";
        return "<pitch><step>" + name.charAt(0) + "</step>" + alter + "<octave>" + name.charAt(name.length() - 1)
                + "</octave></pitch>";
    }

    static Tune read(String score) {
        return read(score, ReadingOptions.DEFAULT);
    }

    static Tune read(String score, ReadingOptions options) {
        try {
            return ScoreReader.read(score, "file name", options);
        } catch (DiagnosedException e) {
            return Assertions.fail(e.diagnostics().get(0).print("score"), e);
        }
    }

    static CheckedTune readChecked(String score) {
        try {
            return ScoreReader.readChecked(score, "file name", ReadingOptions.DEFAULT);
        } catch (DiagnosedException e) {
            return Assertions.fail(e.diagnostics().get(0).print("score"), e);
        }
    }

    /** Returns the first remark with which a score is refused. */
    static Diagnostic refusal(String score) {
        return refusal(score, ReadingOptions.DEFAULT);
    }

    static Diagnostic refusal(String score, ReadingOptions options) {
        DiagnosedException refused =
                Assertions.assertThrows(DiagnosedException.class, () -> ScoreReader.read(score, "file name", options));
        return refused.diagnostics().get(0);
    }

    /** Returns the events in short form: measure, onset, pitches or r, duration, such as {@code 0@1/1:D5*1/2}. */
    static List<String> events(Tune tune) {
        return tune.events().stream().map(ScoreText::event).toList();
    }

    /** Returns the sounds and durations only, such as {@code D5*1/2}. */
    static String sounds(Tune tune) {
        return String.join(" ", tune.events().stream().map(ScoreText::sound).toList());
    }

    private static String event(Event event) {
        return event.measure() + "@" + event.onset() + ":" + sound(event);
    }

    private static String sound(Event event) {
        List<String> names = event.pitches().stream().map(String::valueOf).toList();
        return (event.isRest() ? "r" : String.join("+", names)) + "*" + event.duration();
    }

    /** Returns the texts of the remarks on a tune that have a code. */
    static List<String> remarks(Tune tune, org.bellowscribe.diagnostic.DiagnosticCode code) {
        return tune.diagnostics().stream()
                .filter(each -> each.code() == code)
                .map(Diagnostic::text)
                .toList();
    }
}
