package org.bellowscribe.batch;

import java.nio.charset.StandardCharsets;
import java.util.function.Function;
import org.bellowscribe.decision.DecidedTune;
import org.bellowscribe.drawing.BellowsDrawing;
import org.bellowscribe.drawing.InstrumentDrawing;
import org.bellowscribe.sound.MidiFile;

/** A file that can be written beside a marked score and is made of the decided tune alone. */
public enum Beside {
    /** The picture of what the bellows do. */
    BELLOWS(".bellows.svg", tune -> utf8(BellowsDrawing.of(tune))),
    /** The picture of the buttons used. */
    BUTTONS(".buttons.svg", tune -> utf8(InstrumentDrawing.of(tune))),
    /** What it sounds like. */
    SOUND(".mid", MidiFile::of);

    private final String ending;
    private final Function<DecidedTune, byte[]> content;

    Beside(String ending, Function<DecidedTune, byte[]> content) {
        this.ending = ending;
        this.content = content;
    }

    /** Returns how its name ends, behind the name of the score without its own ending. */
    public String ending() {
        return ending;
    }

    /** Returns the file. */
    byte[] of(DecidedTune tune) {
        return content.apply(tune);
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
