package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.score.Event;
import org.bellowscribe.score.Measure;
import org.bellowscribe.score.Sections;
import org.bellowscribe.score.Tune;
import org.bellowscribe.solver.Apart;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.OpeningRule;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.SolverOptions;
import org.bellowscribe.solver.search.CalmOpenings;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.solver.search.Option;
import org.bellowscribe.solver.search.Problem;
import org.bellowscribe.solver.search.Zones;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** A tune on an instrument: for each event its choices and actions, and the integer problem made of them. */
public final class Model {

    private static final double THOUSANDTHS = 1000;

    private static final int WHOLE_TONE = 2;

    private final Tune tune;
    private final Instrument instrument;
    private final @Nullable Integer startPercent;
    final RuleBook rules;
    final OpeningScale scale;
    final Apart apart;
    final List<Moment> moments = new ArrayList<>();
    final List<List<Choice>> choices = new ArrayList<>();
    private final List<Map<BellowsDirection, List<Action>>> actions = new ArrayList<>();
    /** For each event what the left hand should sound during it. */
    final List<List<WantedSound>> wanted = new ArrayList<>();

    private final List<Integer> leastAir = new ArrayList<>();
    private final Actions beside;
    final List<Integer> order;
    final List<Problem.Edge> edges;

    /** Makes the model of a task. */
    public Model(Tune tune, Instrument instrument, List<WantedSound> sounds, SolverOptions options) {
        this.tune = tune;
        this.instrument = instrument;
        apart = options.apart();
        startPercent = options.startPercent();
        rules = new RuleBook(options.manner());
        scale = new OpeningScale(instrument.bellows());
        order = tune.eventOrder();
        edges = edges(order);
        int closing = closing(tune, order);
        Choices hand = new Choices(instrument);
        beside = new Actions(instrument, rules, tune.tempo(), options.airButton());
        tune.events().forEach(event -> wanted.add(new ArrayList<>()));
        sounds.forEach(sound -> wanted.get(sound.event()).add(sound));
        moments.addAll(moments(closing));
        for (Event event : tune.events()) {
            add(
                    moments.get(event.index()),
                    hand.of(moments.get(event.index())),
                    wanted.get(event.index()),
                    options.pins().at(event.index()));
        }
    }

    private List<Moment> moments(int closing) {
        Sections sections = new Sections(tune);
        RowOfKey home = new RowOfKey(instrument);
        ChordWays ways = new ChordWays(instrument);
        Pitch lowest = lowest(tune);
        List<Moment> all = new ArrayList<>();
        for (Event event : tune.events()) {
            all.add(new Moment(
                    event,
                    tune.seconds(event),
                    event.index() == closing || sections.closes(event),
                    home.of(tune.measureOf(event).key()),
                    isLowest(event, lowest),
                    ways.next(event.measure(), wanted.get(event.index())),
                    tune.measureOf(event).isOnBeat(event.onset())));
        }
        return all;
    }

    // On a diatonic box a note and its upper neighbor lie on one button.
    private static boolean isLowest(Event event, Pitch lowest) {
        return event.pitches().stream().anyMatch(pitch -> pitch.midiNumber() - lowest.midiNumber() <= WHOLE_TONE);
    }

    private static Pitch lowest(Tune tune) {
        return tune.events().stream()
                .flatMap(event -> event.pitches().stream())
                .min(Comparator.naturalOrder())
                .orElse(new Pitch(0));
    }

    private void add(Moment moment, List<Choice> possible, List<WantedSound> wanted, Pins pins) {
        Map<BellowsDirection, List<Action>> free = bothWays(moment, wanted, Pins.NONE);
        Map<BellowsDirection, List<Action>> allowed = pins.isEmpty() ? free : bothWays(moment, wanted, pins);
        actions.add(allowed);
        leastAir.add(leastAir(possible, free));
        choices.add(possible.stream()
                .filter(pins::allows)
                .filter(choice -> allowed.containsKey(choice.direction()))
                .toList());
    }

    private Map<BellowsDirection, List<Action>> bothWays(Moment moment, List<WantedSound> wanted, Pins pins) {
        Map<BellowsDirection, List<Action>> byDirection = new EnumMap<>(BellowsDirection.class);
        for (BellowsDirection direction : BellowsDirection.values()) {
            List<Action> possible = beside.of(moment, wanted, direction, pins);
            if (!possible.isEmpty()) {
                byDirection.put(direction, possible);
            }
        }
        return byDirection;
    }

    // Without pins: a pin must not widen what the start and the end may differ by.
    private static int leastAir(List<Choice> choices, Map<BellowsDirection, List<Action>> actions) {
        int least = Integer.MAX_VALUE;
        for (Choice choice : choices) {
            for (Action action : actions.getOrDefault(choice.direction(), List.of())) {
                least = Math.min(least, action.move().low());
            }
        }
        return least == Integer.MAX_VALUE ? 0 : least;
    }

    /** Returns the first event at which nothing can be played, or -1 if there is none. */
    public int firstBlocked() {
        for (int e = 0; e < choices.size(); e++) {
            if (choices.get(e).isEmpty()) {
                return e;
            }
        }
        return -1;
    }

    // The last event that sounds.
    private static int closing(Tune tune, List<Integer> order) {
        int last = order.size() - 1;
        while (last > 0 && tune.events().get(order.get(last)).isRest()) {
            last--;
        }
        return order.get(last);
    }

    private static List<Problem.Edge> edges(List<Integer> order) {
        Set<Problem.Edge> edges = new LinkedHashSet<>();
        for (int i = 1; i < order.size(); i++) {
            edges.add(new Problem.Edge(order.get(i - 1), order.get(i)));
        }
        return List.copyOf(edges);
    }

    List<Action> actions(int event, BellowsDirection direction) {
        return actions.get(event).getOrDefault(direction, List.of());
    }

    /** Returns the integer problem, in which the {@link SecondOrder} decides between marks of equal points; only for a model in which every event has a choice. */
    public Problem problem(boolean again) {
        int lowest = (int) Math.ceil(instrument.bellows().lowest() * THOUSANDTHS);
        int highest = (int) Math.floor(instrument.bellows().highest() * THOUSANDTHS);
        Integer percent = startPercent;
        int start = percent == null
                ? lowest
                : (int) Math.round(instrument.bellows().capacity() * percent * THOUSANDTHS / 100);
        int least = Math.max(lowest, Math.min(highest, start));
        int most = percent == null ? highest : least;
        Problem inPoints = new Problem(
                order, edges, options(), pairs(), zones(), lowest, highest, again, margin(), least, most, 1);
        return new SecondOrder(moments, choices, actions, tune.measures().size()).within(inPoints);
    }

    /** Returns what is comfortable, with times in milliseconds. */
    CalmOpenings.Comfort comfort() {
        int[] time = moments.stream()
                .mapToInt(moment -> (int) Math.round(moment.seconds() * THOUSANDTHS))
                .toArray();
        return new CalmOpenings.Comfort(
                scale.at(OpeningRule.COMFORTABLE_FROM), scale.at(OpeningRule.COMFORTABLE_TO), time);
    }

    private List<Zones> zones() {
        return moments.stream()
                .map(moment -> scale.zones(percent -> rules.opening(moment, percent)))
                .toList();
    }

    private List<List<Option>> options() {
        List<List<Option>> options = new ArrayList<>();
        for (int e = 0; e < choices.size(); e++) {
            Map<BellowsDirection, List<Move>> moves = new EnumMap<>(BellowsDirection.class);
            for (BellowsDirection direction : BellowsDirection.values()) {
                moves.put(
                        direction,
                        actions(e, direction).stream().map(Action::move).toList());
            }
            List<Option> ofEvent = new ArrayList<>();
            for (Choice choice : choices.get(e)) {
                ofEvent.add(new Option(
                        choice.direction().sign(),
                        rules.step(moments.get(e), choice) + apart.points(e, choice),
                        moves.getOrDefault(choice.direction(), List.of())));
            }
            options.add(ofEvent);
        }
        return options;
    }

    private List<int[][]> pairs() {
        List<int[][]> pairs = new ArrayList<>();
        for (Problem.Edge edge : edges) {
            List<Choice> from = choices.get(edge.from());
            List<Choice> to = choices.get(edge.to());
            int[][] points = new int[from.size()][to.size()];
            for (int i = 0; i < from.size(); i++) {
                for (int j = 0; j < to.size(); j++) {
                    points[i][j] = rules.pair(moments.get(edge.from()), from.get(i), moments.get(edge.to()), to.get(j));
                }
            }
            pairs.add(points);
        }
        return pairs;
    }

    // A pick-up before the first repeat sounds once a playing while the repeats close by themselves: the end may miss
    // the
    // start by that pick-up's own air, and by no more.
    private int margin() {
        int[] played = new int[choices.size()];
        order.forEach(event -> played[event]++);
        boolean repeats = false;
        for (int count : played) {
            repeats |= count > 1;
        }
        int margin = 0;
        for (int i = 0; repeats && i < order.size() && played[order.get(i)] == 1; i++) {
            Measure measure = tune.measureOf(tune.events().get(order.get(i)));
            if (!measure.beatOffset().isPositive()) {
                break;
            }
            margin += leastAir.get(order.get(i));
        }
        return margin;
    }
}
