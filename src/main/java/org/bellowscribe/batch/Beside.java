package org.bellowscribe.batch;

import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.drawing.BellowsDrawing;
import org.bellowscribe.drawing.InstrumentDrawing;
import org.bellowscribe.words.TuneInWords;

/**
 * A text that can be written beside a marked score and is made of the decided tune alone.
 *
 * @param ending how its name ends, behind the name of the score without its own ending
 * @param text what makes it
 */
public record Beside(String ending, Function<DecidedTune, String> text) {

    /** The picture of what the bellows do. */
    public static final Beside BELLOWS = new Beside(".bellows.svg", BellowsDrawing::of);

    /** The picture of the buttons used. */
    public static final Beside BUTTONS = new Beside(".buttons.svg", InstrumentDrawing::of);

    /** Returns the tune in words, in the language of a style. */
    public static Beside words(Style style) {
        return new Beside(".txt", tune -> TuneInWords.of(tune, style).text());
    }

    /** Returns the file. */
    byte[] of(DecidedTune tune) {
        return text.apply(tune).getBytes(StandardCharsets.UTF_8);
    }
}
