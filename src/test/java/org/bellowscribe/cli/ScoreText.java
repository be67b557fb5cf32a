package org.bellowscribe.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small scores for tests: notes of a quarter each, in 4/4 at 120 quarters a minute, four to a measure. */
final class ScoreText {

    private ScoreText() {}

    /**
     * Returns a score.
     *
     * @param notes names such as {@code F#4}, or {@code r} for a rest, with spaces between
     */
    static String of(String title, String notes) {
        StringBuilder text = new StringBuilder("""
                <?xml version="1.0" encoding="UTF-8"?>
                <score-partwise version="4.0">
                  <work><work-title>%s</work-title></work>
                  <part-list><score-part id="P1"><part-name>Melody</part-name></score-part></part-list>
                  <part id="P1">
                """.formatted(title));
        String[] names = notes.split(" ");
        for (int i = 0; i < names.length; i++) {
            if (i % 4 == 0) {
                text.append(i == 0 ? "" : "    </measure>\n").append(measure(i / 4 + 1));
            }
            text.append(note(names[i]));
        }
        return text.append("    </measure>\n  </part>\n</score-partwise>\n").toString();
    }

    /** Writes a score into a file, with the folders on the way, and returns the file's name. */
    static String file(Path file, String notes) throws IOException {
        return write(file, of(file.getFileName().toString().replaceFirst("\\..*", ""), notes));
    }

    /** Writes a text into a file, with the folders on the way, and returns the file's name. */
    static String write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        return file.toString();
    }

    private static String measure(int number) {
        String start = "    <measure number=\"%d\">\n".formatted(number);
        return number > 1 ? start : start + """
                      <attributes><divisions>1</divisions><key><fifths>2</fifths></key>
                        <time><beats>4</beats><beat-type>4</beat-type></time></attributes>
                      <sound tempo="120"/>
                """;
    }

    private static String note(String name) {
        String pitch = name.equals("r")
                ? "<rest/>"
                : "<pitch><step>%s</step><alter>%d</alter><octave>%s</octave></pitch>"
                        .formatted(name.charAt(0), name.contains("#") ? 1 : 0, name.substring(name.length() - 1));
        return "      <note>%s<duration>1</duration><type>quarter</type></note>\n".formatted(pitch);
    }
}
