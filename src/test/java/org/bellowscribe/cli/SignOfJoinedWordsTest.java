package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In {@code push+air!} the sign is that of the air, not of the direction too. */
class SignOfJoinedWordsTest {

    private static final String AIR =
            "<direction placement=\"above\" id=\"bellowscribe-w9\"><direction-type><words>air!</words></direction-type>"
                    + "</direction>";

    @TempDir
    Path folder;

    private String marked(String score, String below) throws IOException {
        CommandRun run = CommandRun.of("mark", score, "--quiet", "--out", folder + "/" + below);
        assertEquals(0, run.code(), run.err());
        return Files.readString(folder.resolve(below).resolve("scale.xml"));
    }

    @Test
    void airThatIsKeptFixesNoDirectionInTheNextRun() throws IOException {
        Path score = Path.of(ScoreText.file(folder.resolve("scale.xml"), "D5 A4 F#4 D4"));
        String text = Files.readString(score);
        Files.writeString(score, text.replaceFirst("<note", AIR + "<note"));
        String once = marked(score.toString(), "once");
        assertTrue(once.matches("(?s).*pu(sh|ll)\\+air!.*"), once);
        assertEquals(once, marked(folder + "/once/scale.xml", "twice"));
    }
}
