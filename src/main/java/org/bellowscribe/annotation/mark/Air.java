package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.annotation.style.Wordings;

/** Where the air button is pressed, and which way the bellows go if they turn there or no note tells. */
public final class Air implements Annotator {

    @Override
    public String id() {
        return "air";
    }

    @Override
    public String summary() {
        return "A word above every note or rest at which the air button is pressed.";
    }

    @Override
    public boolean byDefault() {
        return true;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        return AirPresses.marks(arrangement, step -> arrangement.style().words().air(step.air()));
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        WordLabels words = arrangement.style().words();
        Wordings<Meaning> meanings = arrangement.style().legend();
        List<LegendEntry> entries = new ArrayList<>();
        if (isWritten(arrangement, words.airFull())) {
            entries.add(new LegendEntry(words.airFull(), meanings.say(Meaning.AIR_FULL)));
        }
        if (isWritten(arrangement, words.airLight()) && !words.airLight().equals(words.airFull())) {
            entries.add(new LegendEntry(words.airLight(), meanings.say(Meaning.AIR_LIGHT)));
        }
        if (isWritten(arrangement, words.airBefore())) {
            entries.add(new LegendEntry(words.airBefore(), meanings.say(Meaning.AIR_BEFORE)));
        }
        return entries;
    }

    private boolean isWritten(Arrangement arrangement, String text) {
        return marks(arrangement).stream()
                .anyMatch(mark -> mark instanceof Mark.Words words
                        && words.topic() == Topic.AIR
                        && words.text().equals(text));
    }
}
