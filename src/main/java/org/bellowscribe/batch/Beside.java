package org.bellowscribe.batch;

import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.drawing.BellowsDrawing;
import org.bellowscribe.drawing.InstrumentDrawing;
import org.bellowscribe.sound.MidiFile;
import org.bellowscribe.words.TuneInWords;

/**
 * A file that can be written beside a marked score and is made of the decided tune alone.
 *
 * @param ending how its name ends, behind the name of the score without its own ending
 * @param content what makes it
 */
public record Beside(String ending, Function<DecidedTune, byte[]> content) {

    /** The picture of what the bellows do. */
    public static final Beside BELLOWS = new Beside(".bellows.svg", tune -> utf8(BellowsDrawing.of(tune)));

    /** The picture of the buttons used. */
    public static final Beside BUTTONS = new Beside(".buttons.svg", tune -> utf8(InstrumentDrawing.of(tune)));

    /** What it sounds like. */
    public static final Beside SOUND = new Beside(".mid", MidiFile::of);

    /** Returns the tune in words, in the language of a style. */
    public static Beside words(Style style) {
        return new Beside(".txt", tune -> utf8(TuneInWords.of(tune, style).text()));
    }

    /** Returns the file. */
    byte[] of(DecidedTune tune) {
        return content.apply(tune);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
