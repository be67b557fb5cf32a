package org.bellowscribe.solver.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.bellowscribe.accompaniment.UsualPlan;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.score.Tune;
import org.bellowscribe.score.TuneText;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.Step;
import org.bellowscribe.solver.SyntheticTune;
import org.bellowscribe.solver.Task;
import org.bellowscribe.solver.Times;
import org.bellowscribe.solver.explain.Candidates;
import org.bellowscribe.solver.manner.MannerLibrary;
import org.bellowscribe.solver.search.Answer;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Search;
import org.bellowscribe.solver.search.Zones;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Without the price of equal measures: there the search proves what it finds. */
class SecondOrderTest {

    private static final long CELLS = SolverOptions.USUAL_CELL_LIMIT;

    /** A model, its problem, and what the search finds. */
    private record Played(Task task, Model model, Problem problem, Answer answer) {

        static Played of(Task task) {
            return of(task, Problem.NEVER);
        }

        /** Only what costs at most so many points is looked for. */
        static Played of(Task task, int mostPoints) {
            Model model = modelOf(task);
            Problem problem = model.problem(task.options().times() == Times.AGAIN);
            int below = (int) Math.min(Problem.NEVER, (mostPoints + 1L) * problem.unit());
            return new Played(task, model, problem, Search.solve(problem, CELLS, below));
        }

        /** Whether it was found at so many points. */
        boolean costs(int points) {
            return answer.isFound() && points() == points;
        }

        int points() {
            return problem.points(answer.cost());
        }

        Choice choice(int e) {
            return model.choices.get(e).get(answer.optionAt(e));
        }

        Action action(int e) {
            return model.actions(e, choice(e).direction()).get(answer.moveAt(e));
        }

        // As package-info has them, counted anew.
        int parts() {
            int parts = 0;
            int events = model.choices.size();
            for (int e = 0; e < events; e++) {
                parts += parts(e, choice(e));
                parts += action(e).air() == AirUse.NONE ? 0 : 1 + 4 * e / events;
            }
            for (Problem.Edge edge : model.edges) {
                parts += choice(edge.from()).direction() == choice(edge.to()).direction() ? 0 : 4;
                parts += choice(edge.from()).halves() == choice(edge.to()).halves() ? 0 : 3;
            }
            return parts;
        }

        private int parts(int e, Choice choice) {
            int home = model.moments.get(e).homeRow();
            boolean away = choice.buttons().stream().anyMatch(button -> home > 0 && button.row() != home);
            boolean rest = choice.buttons().isEmpty();
            return (away ? 2 : 0)
                    + (!rest && choice.direction() == BellowsDirection.PULL ? 1 : 0)
                    + choice.fingers().stream().mapToInt(finger -> finger - 1).sum();
        }

        // What no choice of an event is without.
        int partsOfAll() {
            int parts = 0;
            for (int e = 0; e < model.choices.size(); e++) {
                int event = e;
                parts += model.choices.get(e).stream()
                        .mapToInt(choice -> parts(event, choice))
                        .min()
                        .orElse(0);
            }
            return parts;
        }

        Step step(int e) {
            Choice choice = choice(e);
            return new Step(
                    task.tune().events().get(e),
                    choice.direction(),
                    choice.buttons(),
                    choice.fingers(),
                    choice.handOn(),
                    false,
                    action(e).leftHand(),
                    action(e).air(),
                    0,
                    0,
                    0);
        }
    }

    private static Model modelOf(Task task) {
        return new Model(task.tune(), task.instrument(), task.wanted(), task.options());
    }

    private static Task task(Tune tune) throws DiagnosedException {
        Instrument box = InstrumentLibrary.find("dg-21");
        SolverOptions options = new SolverOptions(MannerLibrary.of(MannerLibrary.DEFAULT_ID), Times.AGAIN, true, CELLS);
        return new Task(tune, box, UsualPlan.of(tune, box), options, 0);
    }

    /** Whatever the tune: a weight that is not there, or another one, is seen in the cost itself. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void whatACostHasBelowAPointAreItsParts(int seed) throws DiagnosedException {
        Played played = Played.of(task(SyntheticTune.of(4, true, seed)));
        assertEquals(played.parts() - played.partsOfAll(), played.answer.cost() % played.problem.unit());
    }

    /**
     * Everything else that could be played at any event and costs no more points, all around it decided anew. Without pins
     * of the left hand: those bring in sounds that are left out where nobody asks for them.
     */
    @Test
    void noneOfTheAlternativesOfEqualPointsHasFewerParts() throws DiagnosedException {
        int alternatives = 0;
        for (int seed = 1; seed <= 6; seed++) {
            alternatives += alternatives(task(SyntheticTune.of(4, true, seed)));
        }
        assertTrue(alternatives >= 10, "only " + alternatives + " to decide between");
    }

    private static int alternatives(Task task) {
        Played best = Played.of(task);
        int alternatives = 0;
        for (int e = 0; e < task.tune().events().size(); e++) {
            for (Pin pin : Candidates.of(task, best.step(e))) {
                Task pinned = task.with(Pins.NONE.plus(pin));
                if (pin.leftHand().isEmpty() && modelOf(pinned).firstBlocked() < 0) {
                    Played other = Played.of(pinned, best.points());
                    if (other.costs(best.points())) {
                        alternatives++;
                        int parts = other.parts();
                        assertTrue(parts >= best.parts(), pin + ": " + parts + " after " + best.parts());
                    }
                }
            }
        }
        return alternatives;
    }

    /** With everything turned round in which choices and actions are numbered. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void directionsButtonsAndFingersDoNotHangOnTheOrderOfChoices(int seed) throws DiagnosedException {
        Played played = Played.of(task(SyntheticTune.of(8, true, seed)));
        Problem given = played.problem();
        List<List<Option>> options = given.options().stream()
                .map(ofEvent -> reversed(ofEvent.stream()
                        .map(option -> new Option(option.sign(), option.cost(), reversed(option.moves())))
                        .toList()))
                .toList();
        List<int[][]> pairs = given.pairs().stream()
                .map(points -> reversed(Arrays.asList(points)).stream()
                        .map(row -> reversed(Arrays.stream(row).boxed().toList()).stream()
                                .mapToInt(Integer::intValue)
                                .toArray())
                        .toArray(int[][]::new))
                .toList();
        Answer turned = Search.solve(given.with(options, pairs), CELLS);
        assertEquals(played.answer().cost(), turned.cost());
        List<String> expected = new ArrayList<>();
        List<String> found = new ArrayList<>();
        for (int e = 0; e < given.size(); e++) {
            List<Choice> choices = played.model().choices.get(e);
            expected.add(mark(played.choice(e)));
            found.add(mark(choices.get(choices.size() - 1 - turned.optionAt(e))));
        }
        assertEquals(expected, found);
    }

    private static <T> List<T> reversed(List<T> list) {
        List<T> reversed = new ArrayList<>(list);
        Collections.reverse(reversed);
        return reversed;
    }

    private static String mark(Choice choice) {
        List<String> buttons = choice.buttons().stream().map(Button::id).toList();
        return choice.direction() + " " + buttons + " " + choice.fingers();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void partsNeverOutweighAPoint(int seed) throws DiagnosedException {
        Played played = Played.of(task(SyntheticTune.of(8, true, seed)));
        Problem problem = played.problem();
        assertTrue(problem.unit() > played.parts());
        assertEquals(Search.solve(inPoints(problem), CELLS).cost(), played.points());
    }

    private static Problem inPoints(Problem problem) {
        List<List<Option>> options = new ArrayList<>();
        for (List<Option> ofEvent : problem.options()) {
            options.add(ofEvent.stream()
                    .map(option -> new Option(
                            option.sign(),
                            problem.points(option.cost()),
                            option.moves().stream()
                                    .map(move -> new Move(problem.points(move.cost()), move.low(), move.high()))
                                    .toList()))
                    .toList());
        }
        List<int[][]> pairs = problem.pairs().stream()
                .map(costs -> Arrays.stream(costs)
                        .map(row -> Arrays.stream(row).map(problem::points).toArray())
                        .toArray(int[][]::new))
                .toList();
        List<Zones> zones = problem.zones().stream()
                .map(each -> new Zones(
                        each.from(),
                        Arrays.stream(each.points()).map(problem::points).toArray()))
                .toList();
        return problem.with(options, pairs, zones).withUnit(1);
    }

    /** In D the B of the outer row is pulled, that of the inner row is pushed too; no rule charges anything. */
    @Test
    void whatNoRuleDecidesLiesOnTheRowOfTheKeyUnderTheLowestFinger() throws DiagnosedException {
        SolverOptions free =
                new SolverOptions(new Manner("free", "", List.of(), Map.of(), List.of()), Times.ONCE, true, CELLS);
        Tune tune = TuneText.of("B4*4");
        Played played = Played.of(new Task(tune, InstrumentLibrary.find("dg-21"), List.of(), free, 0));
        assertEquals("PULL [1.5] [1]", mark(played.choice(0)));
        assertEquals(0, played.points());
    }

    /** There whole numbers have no room for parts, and the rules alone decide. */
    @Test
    void aTuneOfManyHundredNotesHasPointsOnly() throws DiagnosedException {
        assertTrue(modelOf(task(SyntheticTune.of(32, false, 1))).problem(true).unit() > 1);
        assertEquals(
                1, modelOf(task(SyntheticTune.of(160, false, 1))).problem(true).unit());
    }
}
