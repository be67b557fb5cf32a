package org.bellowscribe.batch;

import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.drawing.BellowsDrawing;
import org.bellowscribe.drawing.InstrumentDrawing;

/** A file that can be written beside a marked score and is made of the decided tune alone. */
public enum Beside {
    /** The picture of what the bellows do. */
    BELLOWS(".bellows.svg", BellowsDrawing::of),
    /** The picture of the buttons used. */
    BUTTONS(".buttons.svg", InstrumentDrawing::of);

    private final String ending;
    private final Function<DecidedTune, String> text;

    Beside(String ending, Function<DecidedTune, String> text) {
        this.ending = ending;
        this.text = text;
    }

    /** Returns how its name ends, behind the name of the score without its own ending. */
    public String ending() {
        return ending;
    }

    /** Returns the file. */
    byte[] of(DecidedTune tune) {
        return text.apply(tune).getBytes(StandardCharsets.UTF_8);
    }
}
