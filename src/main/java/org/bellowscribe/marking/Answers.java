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
        List<Event> notes = places.notes(measure);
        if (question.note() > notes.size()) {
            throw unknown(
                    "Measure %s has no note %d to explain.".formatted(question.measure(), question.note()),
                    notes.isEmpty()
                            ? "Maybe another measure: no note is struck in this one."
                            : "Maybe one from 1 to %d: notes held over from before do not count."
                                    .formatted(notes.size()));
        }
        if (question.note() > 0) {
            return List.of(notes.get(question.note() - 1));
        }
        return tune.events().stream()
                .filter(event -> event.measure() == measure.index())
                .toList();
    }

    private static DiagnosedException unknown(String text, String advice) {
        return new DiagnosedException(Diagnostic.error(DiagnosticCode.UNKNOWN_NAME, Place.FILE, text, advice));
    }
}
