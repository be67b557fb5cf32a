package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.AirModel;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Tempo;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.search.Move;
import org.bellowscribe.theory.Pitch;

/** What could happen at an event beside the right hand: left-hand sounds and air, with their amounts of air. */
final class Actions {

    private static final double THOUSANDTHS = 1000;

    private final Instrument instrument;
    private final RuleBook rules;
    private final Tempo tempo;
    private final boolean airButton;

    Actions(Instrument instrument, RuleBook rules, Tempo tempo, boolean airButton) {
        this.instrument = instrument;
        this.rules = rules;
        this.tempo = tempo;
        this.airButton = airButton;
    }

    /**
     * Returns the actions of an event in one direction that the pins allow; none is as good as another in every respect.
     */
    List<Action> of(Moment moment, List<WantedSound> wanted, BellowsDirection direction, Pins pins) {
        List<Action> actions = new ArrayList<>();
        double melody = 0;
        for (Pitch pitch : moment.event().pitches()) {
            melody += instrument.air().flow(pitch) * moment.seconds();
        }
        for (Hand hand : hands(moment, wanted, direction, pins)) {
            double nominal = (melody + hand.air()) * THOUSANDTHS;
            for (AirUse air : AirUse.values()) {
                if ((air == AirUse.NONE || airButton) && pins.allows(air)) {
                    Move move = move(moment, nominal, hand.cost(), air);
                    addUnlessDominated(actions, new Action(hand.plays(), air, move, nominal));
                }
            }
        }
        return actions;
    }

    // Bounds are rounded inwards, so every integer between them is a real amount.
    private Move move(Moment moment, double nominal, int cost, AirUse air) {
        AirModel model = instrument.air();
        int low = (int) Math.ceil(nominal * (1 - model.loudnessSlack()));
        int high = Math.max(low, (int) Math.floor(nominal * (1 + model.loudnessSlack())));
        double flow = switch (air) {
            case NONE -> 0;
            case LIGHT -> instrument.bellows().lightAirFlow();
            case FULL -> instrument.bellows().fullAirFlow();
        };
        int most = (int) Math.floor(flow * moment.seconds() * THOUSANDTHS);
        return new Move(cost + rules.air(moment, air), low, high + most);
    }

    private static void addUnlessDominated(List<Action> actions, Action action) {
        for (Action other : actions) {
            if (covers(other, action)) {
                return;
            }
        }
        actions.removeIf(other -> covers(action, other));
        actions.add(action);
    }

    // Of two as cheap, pressing less is not covered by pressing more.
    private static boolean covers(Action a, Action b) {
        int dearer = a.move().cost() - b.move().cost();
        boolean asCheap = dearer < 0 || (dearer == 0 && a.air().compareTo(b.air()) <= 0);
        return asCheap
                && a.move().low() <= b.move().low()
                && a.move().high() >= b.move().high();
    }

    /** One way for the left hand to play all its moments: points, and air in RU.s at usual loudness. */
    private record Hand(List<LeftHandPlay> plays, int cost, double air) {}

    // Ways with the same air differ in cost only: the cheapest of them is enough.
    private List<Hand> hands(Moment moment, List<WantedSound> wanted, BellowsDirection direction, Pins pins) {
        List<Hand> hands = List.of(new Hand(List.of(), 0, 0));
        for (int stroke = 0; stroke < wanted.size(); stroke++) {
            int at = stroke;
            List<Hand> ways = ways(moment, wanted.get(at), direction, play -> pins.allows(at, play));
            Map<Long, Hand> cheapest = new TreeMap<>();
            for (Hand hand : hands) {
                for (Hand one : ways) {
                    List<LeftHandPlay> plays = new ArrayList<>(hand.plays());
                    plays.addAll(one.plays());
                    keepCheaper(cheapest, new Hand(plays, hand.cost() + one.cost(), hand.air() + one.air()));
                }
            }
            hands = List.copyOf(cheapest.values());
        }
        return hands;
    }

    private List<Hand> ways(
            Moment moment, WantedSound want, BellowsDirection direction, Predicate<LeftHandPlay> allowed) {
        Map<Long, Hand> cheapest = new TreeMap<>();
        for (LeftHandPlay play : new StrokeWays(instrument, want, direction).of(allowed)) {
            LeftHandSound sound = play.sound();
            double air = sound == null ? 0 : instrument.air().flow(sound) * tempo.seconds(want.duration());
            keepCheaper(cheapest, new Hand(List.of(play), rules.leftHand(moment, play, play.fit()), air));
        }
        return List.copyOf(cheapest.values());
    }

    private static void keepCheaper(Map<Long, Hand> cheapest, Hand hand) {
        long key = Math.round(hand.air() * THOUSANDTHS);
        Hand other = cheapest.get(key);
        if (other == null || hand.cost() < other.cost()) {
            cheapest.put(key, hand);
        }
    }
}
