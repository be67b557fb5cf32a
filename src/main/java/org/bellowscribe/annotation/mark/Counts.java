package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Counting;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.style.PracticeLabels;
import org.bellowscribe.score.Measure;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;

/**
 * What is counted at every note, and the beats that pass until the next one: {@code 1·2} below a note of two beats. A rest
 * that follows in the same measure is counted with the note before it: some programs lose texts below rests.
 */
public final class Counts implements Annotator {

    @Override
    public String id() {
        return "counts";
    }

    @Override
    public String summary() {
        return "The counts below the notes: 1 & 2 &, triplets, and the beats that pass during a note.";
    }

    @Override
    public boolean byDefault() {
        return false;
    }

    @Override
    public List<Mark> marks(Arrangement arrangement) {
        List<Mark> marks = new ArrayList<>();
        List<Step> steps = arrangement.solution().steps();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            if (step.event().isRest()) {
                continue;
            }
            Fraction duration = step.event().duration();
            for (int next = i + 1; next < steps.size() && isRestOf(steps.get(next), step); next++) {
                duration = duration.plus(steps.get(next).event().duration());
            }
            String text = text(arrangement, step, duration);
            if (!text.isEmpty()) {
                marks.add(new Mark.Syllable(step.event().index(), id(), text));
            }
        }
        return marks;
    }

    private static boolean isRestOf(Step rest, Step note) {
        return rest.event().isRest() && rest.event().measure() == note.event().measure();
    }

    private static String text(Arrangement arrangement, Step step, Fraction duration) {
        PracticeLabels labels = arrangement.style().practice();
        List<String> counts = new ArrayList<>();
        List<Measure> measures = arrangement.tune().measures();
        Fraction from = step.event().onset();
        Fraction left = duration;
        for (int m = step.event().measure(); m < measures.size() && left.isPositive(); m++) {
            Counting counting = new Counting(measures.get(m), labels);
            Fraction end = Fraction.min(from.plus(left), measures.get(m).length());
            if (m == step.event().measure()) {
                counts.add(counting.at(from));
            }
            for (Fraction beat = counting.toFirstBeat(); beat.compareTo(end) < 0; beat = beat.plus(counting.unit())) {
                boolean own = m == step.event().measure() && beat.compareTo(from) <= 0;
                if (!own) {
                    counts.add(counting.at(beat));
                }
            }
            left = from.plus(left).minus(measures.get(m).length());
            from = Fraction.ZERO;
        }
        counts.removeIf(String::isEmpty);
        return String.join(arrangement.style().leftHand().then(), counts);
    }

    @Override
    public List<LegendEntry> legend(Arrangement arrangement) {
        return marks(arrangement).stream()
                .limit(1)
                .map(mark -> new LegendEntry(((Mark.Syllable) mark).text(), "what is counted"))
                .toList();
    }
}
