package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Step;
import org.bellowscribe.theory.Fraction;

/**
 * Writes out what the bellows do: a stroke on every beat, and wherever they turn or the air button is pressed, with its
 * count below and direction and air above. Where they rest the part does.
 */
public final class BellowsScribe {

    /** A stretch of one measure in which the bellows go one way during one event; told if they turn or air is pressed. */
    private record Stretch(Fraction from, Fraction to, boolean told) {}

    private final Arrangement arrangement;
    private final Tune sheet;
    private final PlayNeighbors neighbors;
    private final MergedWords words;
    private final List<List<Stretch>> stretches = new ArrayList<>();

    private BellowsScribe(Arrangement arrangement, Tune sheet) {
        this.arrangement = arrangement;
        this.sheet = sheet;
        words = new MergedWords(arrangement.style().words());
        neighbors = PlayNeighbors.of(arrangement.tune(), event -> moves(arrangement.step(event.index())));
        sheet.measures().forEach(measure -> stretches.add(new ArrayList<>()));
    }

    /**
     * Returns the part.
     *
     * @param sheet the tune as the sheet has it
     * @param more marks, of which the words are written
     */
    public static OwnPart part(Arrangement arrangement, Tune sheet, List<Mark> more) {
        BellowsScribe scribe = new BellowsScribe(arrangement, sheet);
        for (Mark mark : more) {
            if (mark instanceof Mark.Words text) {
                scribe.words.add(text.event(), text);
            }
        }
        arrangement.solution().steps().forEach(scribe::step);
        return scribe.part();
    }

    private static boolean moves(Step step) {
        return step.openingAfter() != step.openingBefore();
    }

    private void step(Step step) {
        int event = step.event().index();
        if (!moves(step)) {
            return;
        }
        WordLabels labels = arrangement.style().words();
        boolean start = neighbors.sectionStarts().contains(event);
        boolean turns = neighbors.before(event).stream()
                .anyMatch(before -> arrangement.step(before).direction() != step.direction());
        if (start || turns) {
            words.add(event, new Mark.Words(event, Topic.DIRECTION, labels.direction(step.direction())));
        }
        if (step.air() != AirUse.NONE) {
            words.add(event, new Mark.Words(event, Topic.AIR, labels.air(step.air())));
        }
        addStretches(step, start || turns || step.air() != AirUse.NONE);
    }

    private void addStretches(Step step, boolean told) {
        PartMoment from = PartMoment.of(sheet, step.event(), Fraction.ZERO);
        Fraction left = step.event().duration();
        Fraction onset = from.onset();
        for (int measure = from.measure(); measure < stretches.size() && left.isPositive(); measure++) {
            Fraction room = sheet.measures().get(measure).length().minus(onset);
            Fraction here = Fraction.min(left, room);
            if (here.isPositive()) {
                stretches.get(measure).add(new Stretch(onset, onset.plus(here), told && measure == from.measure()));
            }
            left = left.minus(here);
            onset = Fraction.ZERO;
        }
    }

    private OwnPart part() {
        List<List<PartWords>> texts = new ArrayList<>();
        sheet.measures().forEach(measure -> texts.add(new ArrayList<>()));
        for (Annotation each : words.annotations()) {
            PartMoment moment = PartMoment.of(sheet, sheet.events().get(each.noteIndex()), Fraction.ZERO);
            texts.get(moment.measure()).add(new PartWords(moment.onset(), ((Annotation.Words) each).text()));
        }
        List<PartMeasure> measures = new ArrayList<>();
        for (Measure measure : sheet.measures()) {
            measures.add(new PartMeasure(measure, strokes(measure), texts.get(measure.index())));
        }
        return new OwnPart(PartLook.BELLOWS, sheet.part(), measures);
    }

    private List<PartNote> strokes(Measure measure) {
        Counting counting = new Counting(measure, arrangement.style().practice());
        List<Stretch> own = stretches.get(measure.index());
        SortedSet<Fraction> cuts = new TreeSet<>();
        for (Fraction beat = counting.toFirstBeat();
                beat.compareTo(measure.length()) < 0;
                beat = beat.plus(counting.unit())) {
            cuts.add(beat);
        }
        // Each begins where something is told or nothing goes on from before, and ends where nothing goes on.
        TreeMap<Fraction, Fraction> covered = new TreeMap<>();
        for (Stretch stretch : own) {
            covered.merge(stretch.from(), stretch.to(), BellowsScribe::later);
            boolean goesOn = own.stream().anyMatch(other -> other.to().equals(stretch.from()));
            if (stretch.told() || !goesOn) {
                cuts.add(stretch.from());
            }
            if (own.stream().noneMatch(other -> other.from().equals(stretch.to()))) {
                cuts.add(stretch.to());
            }
        }
        return notes(new ArrayList<>(cuts), covered, counting);
    }

    private static Fraction later(Fraction one, Fraction other) {
        return one.compareTo(other) < 0 ? other : one;
    }

    private static List<PartNote> notes(
            List<Fraction> cuts, NavigableMap<Fraction, Fraction> covered, Counting counting) {
        List<PartNote> notes = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            Fraction from = cuts.get(i);
            Fraction to =
                    i + 1 < cuts.size() ? cuts.get(i + 1) : counting.measure().length();
            Map.Entry<Fraction, Fraction> stretch = covered.floorEntry(from);
            if (stretch == null || stretch.getValue().compareTo(from) <= 0 || to.compareTo(from) <= 0) {
                continue;
            }
            String count = counting.at(from);
            List<PartSyllable> below = count.isEmpty() ? List.of() : List.of(new PartSyllable("counts", 1, count));
            notes.add(new PartNote(from, to.minus(from), List.of(), below, List.of()));
        }
        return notes;
    }
}
