package org.bellowscribe.difficulty;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.Term;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.model.Choices;
import org.bellowscribe.theory.Pitch;

/**
 * What the hand that plays the melody and the bellows have to do at the least: in each stretch the way that counts least is
 * found among all that the box has (dynamic programming from note to note), and the stretch in which it counts most is
 * taken. With a button less there are fewer ways, and the least of fewer is never less; faster or with more notes each way
 * counts at least as much.
 */
final class EasiestWay {

    /** The terms that depend on the way. */
    static final List<Term> TERMS = List.of(
            Term.REVERSALS, Term.HELD_REVERSALS, Term.QUICK_TURNS, Term.ROW_CHANGES, Term.SHIFTS, Term.STRETCHES);

    private final Choices choices;
    private final List<Playing.Played<Event>> notes;
    private final Grading grading;
    private final List<List<Way>> ways = new ArrayList<>();
    private final Map<List<Pitch>, List<Way>> known = new HashMap<>();
    private final Map<List<List<Way>>, int[][]> kinds = new HashMap<>();
    /** By note: the kinds of what happens before it, and what each kind counts there; stretches share most notes. */
    private final Map<Integer, int[][]> kindsBefore = new HashMap<>();

    private final Map<Integer, double[]> pointsBefore = new HashMap<>();

    EasiestWay(Instrument instrument, List<Playing.Played<Event>> notes, Grading grading) {
        this.choices = new Choices(instrument);
        this.grading = grading;
        // A note that nobody can play says nothing of the others.
        this.notes = notes.stream().filter(note -> !ways(note.what()).isEmpty()).toList();
        this.notes.forEach(note -> ways.add(ways(note.what())));
    }

    private List<Way> ways(Event event) {
        return known.computeIfAbsent(
                event.pitches(), any -> Way.of(choices.of(new org.bellowscribe.solver.Moment(event, 1, false))));
    }

    /** A stretch of notes and the least that it counts. */
    private record Stretch(int first, int last, double points) {}

    /** Returns the figures of the terms. */
    Map<Term, Figure> figures() {
        Stretch hardest = new Stretch(0, -1, -1);
        int first = 0;
        for (int last = 0; last < notes.size(); last++) {
            first = Figure.first(notes, first, last);
            // A stretch to which the next note still belongs counts no more than with it.
            boolean full = last + 1 == notes.size() || Figure.first(notes, first, last + 1) > first;
            if (full) {
                double points = new Passage(first, last).least();
                hardest = points > hardest.points + Figure.SAME ? new Stretch(first, last, points) : hardest;
            }
        }
        return notes.isEmpty() ? Map.of() : new Passage(hardest.first, hardest.last).figures();
    }

    private double gap(int note) {
        return note < 1 || note >= notes.size()
                ? Double.POSITIVE_INFINITY
                : notes.get(note).seconds() - notes.get(note - 1).seconds();
    }

    private int[][] kinds(int note) {
        return kindsBefore.computeIfAbsent(note, this::kindsOfWays);
    }

    private int[][] kindsOfWays(int note) {
        List<Way> before = ways.get(note - 1);
        List<Way> now = ways.get(note);
        return kinds.computeIfAbsent(List.of(before, now), any -> {
            int[][] table = new int[before.size()][now.size()];
            for (int i = 0; i < before.size(); i++) {
                for (int j = 0; j < now.size(); j++) {
                    table[i][j] = before.get(i).to(now.get(j));
                }
            }
            return table;
        });
    }

    /** Returns how much what happens before a note counts for a term. */
    private double amount(Term term, int note, int kind) {
        boolean turns = (kind & Way.TURN) != 0;
        boolean held = (kind & Way.HELD) != 0;
        boolean counts = switch (term) {
            case REVERSALS -> turns && !held;
            case HELD_REVERSALS -> turns && held;
            case QUICK_TURNS -> turns;
            case ROW_CHANGES -> (kind & Way.ROW) != 0;
            case SHIFTS -> (kind & Way.MOVE) != 0;
            default -> false;
        };
        // A turn between two notes that have quick neighbors too; the slowest of the three steps counts.
        double time =
                term == Term.QUICK_TURNS ? Math.max(gap(note), Math.max(gap(note - 1), gap(note + 1))) : gap(note);
        return counts ? Moment.bySpeed(time) : 0;
    }

    private double[] points(int note) {
        return pointsBefore.computeIfAbsent(note, any -> {
            double[] points = new double[2 * Way.MOVE];
            for (int kind = 0; kind < points.length; kind++) {
                points[kind] = points(note, kind);
            }
            return points;
        });
    }

    private double points(int note, int kind) {
        double points = 0;
        for (Term term : TERMS) {
            points += grading.weight(term) * amount(term, note, kind);
        }
        return points;
    }

    /** Some notes, with the step that leads to the first of them. */
    private final class Passage {

        private final int first;
        private final int last;
        private final int begin;
        private final int[][] from;
        private double[] least;

        Passage(int first, int last) {
            this.first = first;
            this.last = last;
            begin = Math.max(0, first - 1);
            from = new int[last - begin + 1][];
            least = new double[ways.get(begin).size()];
            for (int way = 0; way < least.length; way++) {
                least[way] = begin == first ? stretches(begin, way) : 0;
            }
            for (int note = begin + 1; note <= last; note++) {
                step(note);
            }
        }

        private double stretches(int note, int way) {
            return grading.weight(Term.STRETCHES) * ways.get(note).get(way).stretches();
        }

        private void step(int note) {
            int[][] table = kinds(note);
            double[] points = points(note);
            double[] next = new double[ways.get(note).size()];
            int[] best = new int[next.length];
            for (int way = 0; way < next.length; way++) {
                next[way] = Double.POSITIVE_INFINITY;
                for (int before = 0; before < least.length; before++) {
                    double sum = least[before] + points[table[before][way]];
                    best[way] = sum < next[way] ? before : best[way];
                    next[way] = Math.min(sum, next[way]);
                }
                next[way] += stretches(note, way);
            }
            least = next;
            from[note - begin] = best;
        }

        double least() {
            return least[end()];
        }

        private int end() {
            int end = 0;
            for (int way = 1; way < least.length; way++) {
                end = least[way] < least[end] ? way : end;
            }
            return end;
        }

        Map<Term, Figure> figures() {
            Map<Term, Double> sums = new EnumMap<>(Term.class);
            int way = end();
            for (int note = last; note >= first; note--) {
                sums.merge(Term.STRETCHES, (double) ways.get(note).get(way).stretches(), Double::sum);
                if (note > begin) {
                    int before = from[note - begin][way];
                    int kind = kinds(note)[before][way];
                    for (Term term : TERMS) {
                        sums.merge(term, amount(term, note, kind), Double::sum);
                    }
                    way = before;
                }
            }
            Map<Term, Figure> figures = new EnumMap<>(Term.class);
            sums.forEach((term, sum) -> figures.put(
                    term,
                    sum == 0
                            ? Figure.NONE
                            : new Figure(
                                    sum / Figure.STRETCH,
                                    notes.get(first).what().index())));
            return figures;
        }
    }
}
