package org.bellowscribe.solver.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.stream.IntStream;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Grip;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.solver.Choice;
import org.bellowscribe.solver.Moment;
import org.bellowscribe.solver.StepLimit;
import org.bellowscribe.theory.Pitch;

/** What could play the melody at an event: every choice that keeps the step limits, in a fixed order. */
public final class Choices {

    // Four fingers lie on four neighbouring buttons.
    private static final int FINGERS = 4;
    // The index finger on button 3: published, S18, "Bellows and Strings" blog.
    private static final int HOME = 3;

    private final Map<BellowsDirection, Map<Pitch, List<Button>>> buttons = new EnumMap<>(BellowsDirection.class);
    private final List<StepLimit> limits;
    private final Grip grip;
    private final List<Place> places;

    /** Lays the hand on an instrument. */
    public Choices(Instrument instrument) {
        for (BellowsDirection direction : BellowsDirection.values()) {
            buttons.put(direction, byPitch(instrument, direction));
        }
        limits = ServiceLoader.load(StepLimit.class).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
        grip = instrument.grip();
        places = places(instrument);
    }

    // Places near the home of the hand come first: of marks that cost the same the first ones are taken. On one row
    // there
    // is nothing to lean to.
    private static List<Place> places(Instrument instrument) {
        if (instrument.grip().strapped()) {
            return List.of(new Place(1, false));
        }
        List<Boolean> leans = instrument.rows() > 1 ? List.of(false, true) : List.of(false);
        int longest =
                instrument.buttons().stream().mapToInt(Button::number).max().orElse(1);
        return IntStream.rangeClosed(1, Math.max(1, longest - FINGERS + 1))
                .boxed()
                .sorted(Comparator.comparingInt(place -> Math.abs(place - HOME)))
                .flatMap(place -> leans.stream().map(leaning -> new Place(place, leaning)))
                .toList();
    }

    private static Map<Pitch, List<Button>> byPitch(Instrument instrument, BellowsDirection direction) {
        Map<Pitch, List<Button>> byPitch = new HashMap<>();
        for (Button button : instrument.buttons()) {
            Pitch pitch = button.pitch(direction);
            if (pitch != null) {
                byPitch.computeIfAbsent(pitch, any -> new ArrayList<>()).add(button);
            }
        }
        return byPitch;
    }

    /** Returns the choices of an event by direction, place of the hand (the home first), row and button; empty if it cannot be played. */
    public List<Choice> of(Moment moment) {
        List<Choice> choices = new ArrayList<>();
        for (BellowsDirection direction : BellowsDirection.values()) {
            List<List<Button>> candidates = new ArrayList<>();
            for (Pitch pitch : moment.event().pitches()) {
                candidates.add(buttons(pitch, direction));
            }
            for (Place place : places) {
                combine(moment, new Partial(direction, place, candidates), new ArrayList<>(), choices);
            }
        }
        return choices;
    }

    private record Partial(BellowsDirection direction, Place place, List<List<Button>> candidates) {}

    /** A place of the hand: the button of the outer row under the index finger, and whether the hand leans. */
    private record Place(int handOn, boolean leaning) {

        Choice choice(BellowsDirection direction, List<Button> buttons, List<Integer> fingers, Grip grip) {
            return new Choice(
                    direction, buttons.isEmpty() ? handOn : on(buttons.get(0)), leaning, buttons, fingers, grip);
        }

        int on(Button button) {
            return leaning && button.row() > 1 ? handOn - 1 : handOn;
        }
    }

    private void combine(Moment moment, Partial partial, List<Button> chosen, List<Choice> choices) {
        if (chosen.size() == partial.candidates().size()) {
            finger(moment, partial, chosen, new ArrayList<>(), choices);
            return;
        }
        for (Button button : partial.candidates().get(chosen.size())) {
            if (partial.place().on(button) >= 1) {
                chosen.add(button);
                combine(moment, partial, chosen, choices);
                chosen.remove(chosen.size() - 1);
            }
        }
    }

    private void finger(
            Moment moment, Partial partial, List<Button> chosen, List<Integer> fingers, List<Choice> choices) {
        if (fingers.size() == chosen.size()) {
            Choice choice = partial.place().choice(partial.direction(), chosen, fingers, grip);
            if (limits.stream().allMatch(limit -> limit.allows(moment, choice))) {
                choices.add(choice);
            }
            return;
        }
        for (int finger : fingers(chosen, fingers.size(), partial.place())) {
            fingers.add(finger);
            finger(moment, partial, chosen, fingers, choices);
            fingers.remove(fingers.size() - 1);
        }
    }

    // To one of two buttons side by side the finger next to theirs may come.
    private List<Integer> fingers(List<Button> chosen, int index, Place place) {
        Button button = chosen.get(index);
        List<Integer> own = grip.fingers(button, place.on(button));
        if (grip.strapped() || own.isEmpty() || chosen.stream().noneMatch(button::isBeside)) {
            return own;
        }
        return IntStream.of(own.get(0), own.get(0) - 1, own.get(0) + 1)
                .filter(finger -> finger >= 1 && finger <= FINGERS)
                .boxed()
                .toList();
    }

    /** Returns the buttons that give a pitch in a direction. */
    public List<Button> buttons(Pitch pitch, BellowsDirection direction) {
        return buttons.getOrDefault(direction, Map.of()).getOrDefault(pitch, List.of());
    }

    /** Returns true if some button gives the pitch. */
    public boolean hasButton(Pitch pitch) {
        return !buttons(pitch, BellowsDirection.PUSH).isEmpty()
                || !buttons(pitch, BellowsDirection.PULL).isEmpty();
    }
}
