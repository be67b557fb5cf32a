package org.bellowscribe.syllabus;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.theory.Fraction;

/**
 * Finds the rhythms of a tune: the lengths between one beat at which a note or rest begins and the next such beat, within a
 * measure. A note that goes on into the next measure counts to its end.
 */
final class Rhythms {

    private static final Fraction TRIPLET = Fraction.of(3, 2);

    private Rhythms() {}

    static SortedSet<Thing> of(Tune tune) {
        SortedMap<Integer, List<Event>> byMeasure = new TreeMap<>();
        tune.events()
                .forEach(event -> byMeasure
                        .computeIfAbsent(event.measure(), measure -> new ArrayList<>())
                        .add(event));
        SortedSet<Thing> rhythms = new TreeSet<>();
        byMeasure.forEach((measure, events) -> add(tune.measures().get(measure), events, rhythms));
        return rhythms;
    }

    private static void add(Measure measure, List<Event> events, SortedSet<Thing> rhythms) {
        List<String> figure = new ArrayList<>();
        for (Event event : events) {
            if (isOnBeat(measure, event) && !figure.isEmpty()) {
                rhythms.add(rhythm(figure));
                figure.clear();
            }
            figure.add(name(event));
        }
        rhythms.add(rhythm(figure));
    }

    private static Thing rhythm(List<String> figure) {
        return new Thing(Thing.Kind.RHYTHM, 0, 0, String.join(" + ", figure));
    }

    private static boolean isOnBeat(Measure measure, Event event) {
        Fraction beats = event.onset()
                .plus(measure.beatOffset())
                .dividedBy(measure.time().pulse());
        return beats.denominator() == 1;
    }

    private static String name(Event event) {
        return length(event.duration()) + (event.isRest() ? " rest" : "");
    }

    /** Returns the name of a length in quarters, such as {@code dotted quarter}. */
    static String length(Fraction quarters) {
        String plain = plain(quarters);
        if (!plain.isEmpty()) {
            return plain;
        }
        String undotted = plain(quarters.times(Fraction.of(2, 3)));
        String triplet = plain(quarters.times(TRIPLET));
        if (!undotted.isEmpty() && quarters.denominator() % 3 != 0) {
            return "dotted " + undotted;
        }
        if (!triplet.isEmpty()) {
            return "triplet " + triplet;
        }
        String twiceDotted = plain(quarters.times(Fraction.of(4, 7)));
        return twiceDotted.isEmpty()
                ? "%s/%s of a quarter".formatted(quarters.numerator(), quarters.denominator())
                : "double-dotted " + twiceDotted;
    }

    private static String plain(Fraction quarters) {
        return switch (quarters.toString()) {
            case "8/1" -> "double whole";
            case "4/1" -> "whole";
            case "2/1" -> "half";
            case "1/1" -> "quarter";
            case "1/2" -> "eighth";
            case "1/4" -> "16th";
            case "1/8" -> "32nd";
            default -> "";
        };
    }
}
