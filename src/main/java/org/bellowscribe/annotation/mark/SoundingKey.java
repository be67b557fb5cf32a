package org.bellowscribe.annotation.mark;

import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.Topic;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.solver.Step;

/** The key that sounds, where a sheet keeps its notes but is played in another key. */
public final class SoundingKey implements Annotator {

    @Override
    public String id() {
        return "sounding-key";
    }

    @Override
    public String summary() {
        return "The key that sounds and how many semitones it lies above the sheet, where the sheet keeps its notes.";
    }

    @Override
    public boolean byDefault() {
        return true;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        if (arrangement.above() == 0 || arrangement.notes().isEmpty()) {
            return List.of();
        }
        Step first = arrangement.notes().get(0);
        String text = arrangement
                .style()
                .words()
                .sounding(
                        arrangement.tune().measureOf(first.event()).key().name(), "%+d".formatted(arrangement.above()));
        return List.of(new Mark.Words(first.event().index(), Topic.KEY, text));
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).stream()
                .map(mark -> new LegendEntry(
                        ((Mark.Words) mark).text(), arrangement.style().legend().say(Meaning.SOUNDING)))
                .toList();
    }
}
