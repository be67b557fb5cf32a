package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.style.Meaning;

/** Chord symbols of what the left hand really sounds, for those who play along; a score that has some keeps its own. */
public final class ChordSymbols implements Annotator {

    @Override
    public String id() {
        return "chord-symbols";
    }

    @Override
    public String summary() {
        return "A chord symbol wherever what the left hand sounds changes, unless the score has chord symbols of its own.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        if (!arrangement.tune().harmonies().isEmpty()) {
            return List.of();
        }
        List<Mark> marks = new ArrayList<>();
        for (ChordChange change : ChordChange.all(arrangement)) {
            SoundingChord chord = change.chord();
            marks.add(new Mark.Symbol(
                    change.stroke().event(),
                    change.stroke().offset(),
                    chord.root().plus(-arrangement.above()),
                    chord.third(),
                    chord.bass().plus(-arrangement.above())));
        }
        return marks;
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).stream()
                .map(mark -> ((Mark.Symbol) mark).name())
                .limit(1)
                .map(name -> new LegendEntry(name, arrangement.style().legend().say(Meaning.CHORD_SYMBOL)))
                .toList();
    }
}
