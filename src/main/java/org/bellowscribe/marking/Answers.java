package org.bellowscribe.marking;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.decision.Steered;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.Whereabouts;
import org.bellowscribe.solver.Solution;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.explain.Alternative;
import org.bellowscribe.solver.explain.Alternatives;
import org.bellowscribe.solver.explain.Explanation;
import org.bellowscribe.solver.explain.PinPrice;

/** Answers what a teacher asked about a solved tune: the prices of pins, why a note is played so, other ways. */
final class Answers {

    private final Steering steering;
    private final Playing playing;

    Answers(Steering steering, Playing playing) {
        this.steering = steering;
        this.playing = playing;
    }

    /**
     * Returns the answers.
     *
     * @param task the tune with its pins
     * @param solution how it is played
     * @throws DiagnosedException if the question is about a note that is not there
     */
    Steered of(Task task, Solution solution) throws DiagnosedException {
        Steering.Question question = steering.question();
        Task played = playing.played(task);
        List<Explanation> explanations = new ArrayList<>();
        for (Event event : question == null ? List.<Event>of() : asked(task.tune(), question)) {
            explanations.add(Explanation.of(played, solution, event.index()));
        }
        boolean pinned = !played.options().pins().isEmpty();
        return new Steered(
                pinned ? PinPrice.of(played, solution) : List.of(), explanations, otherWays(task, played, solution));
    }

    private List<Alternative> otherWays(Task task, Task played, Solution solution) {
        if (steering.alternatives() == 0) {
            return List.of();
        }
        return Alternatives.of(played, solution, steering.alternatives()).stream()
                .filter(way -> playing.replay(task, way.solution()).isEmpty())
                .map(way -> way.with(playing.onMelody(way.solution(), task.tune())))
                .toList();
    }

    private static List<Event> asked(Tune tune, Steering.Question question) throws DiagnosedException {
        Whereabouts places = new Whereabouts(tune);
        Measure measure = places.measure(question.measure());
        if (measure == null) {
            List<String> all = places.measures();
            throw unknown(
                    "The tune has no measure %s to explain.".formatted(question.measure()),
                    "Maybe one from %s to %s.".formatted(all.get(0), all.get(all.size() - 1)));
        }
        List<Event> all = tune.events().stream()
                .filter(event -> event.measure() == measure.index())
                .toList();
        if (question.note() == 0) {
            return all;
        }
        List<Event> some = question.rest() ? places.rests(measure) : places.notes(measure);
        if (question.note() > some.size()) {
            throw missing(question, some.size());
        }
        return List.of(some.get(question.note() - 1));
    }

    private static DiagnosedException missing(Steering.Question question, int count) {
        String thing = question.rest() ? "rest" : "note";
        String range = count == 1 ? "1" : "one from 1 to " + count;
        String none = question.rest()
                ? "Maybe another measure: there is no rest in this one."
                : "Maybe another measure: no note is struck in this one.";
        String some = question.rest()
                ? "Maybe %s.".formatted(range)
                : "Maybe %s: notes held over from before do not count.".formatted(range);
        return unknown(
                "Measure %s has no %s %d to explain.".formatted(question.measure(), thing, question.note()),
                count == 0 ? none : some);
    }

    private static DiagnosedException unknown(String text, String advice) {
        return new DiagnosedException(Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, Place.FILE, text, advice));
    }
}
