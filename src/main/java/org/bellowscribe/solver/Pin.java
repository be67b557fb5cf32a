package org.bellowscribe.solver;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.jspecify.annotations.Nullable;

/**
 * What a teacher has fixed at one event: only what agrees with it may be played there. Everything that it leaves open
 * stays free.
 *
 * @param event 0-based index of the event
 * @param direction the way the bellows go; null leaves it open
 * @param buttons by 0-based place of the pitch in the event, the button's {@code row.number}
 * @param fingers by 0-based place of the pitch in the event, the finger, 1 (index) to 4 (little)
 * @param handOn number of the button under the index finger, 1 or more; null leaves it open
 * @param leftHand by 0-based place among the event's wanted sounds of the left hand, the label of what sounds there, such
 *     as {@code G} or {@code em}; {@link #SILENCE} for nothing
 * @param air how far the air button is pressed; null leaves it open
 */
public record Pin(
        int event,
        @Nullable BellowsDirection direction,
        SortedMap<Integer, String> buttons,
        SortedMap<Integer, Integer> fingers,
        @Nullable Integer handOn,
        SortedMap<Integer, String> leftHand,
        @Nullable AirUse air) {

    /** The left hand plays nothing. */
    public static final String SILENCE = "";

    /** Copies the maps. */
    public Pin {
        buttons = Collections.unmodifiableSortedMap(new TreeMap<>(buttons));
        fingers = Collections.unmodifiableSortedMap(new TreeMap<>(fingers));
        leftHand = Collections.unmodifiableSortedMap(new TreeMap<>(leftHand));
    }

    /** Returns a pin that leaves everything open. */
    public static Pin at(int event) {
        return new Pin(event, null, new TreeMap<>(), new TreeMap<>(), null, new TreeMap<>(), null);
    }

    /** Returns this pin with a direction. */
    public Pin direction(BellowsDirection way) {
        return new Pin(event, way, buttons, fingers, handOn, leftHand, air);
    }

    /**
     * Returns this pin with a button.
     *
     * @param pitch 0-based place of the pitch in the event
     * @param id the button's {@code row.number}
     */
    public Pin button(int pitch, String id) {
        return new Pin(event, direction, with(buttons, pitch, id), fingers, handOn, leftHand, air);
    }

    /**
     * Returns this pin with a finger.
     *
     * @param pitch 0-based place of the pitch in the event
     * @param finger 1 (index) to 4 (little)
     */
    public Pin finger(int pitch, int finger) {
        return new Pin(event, direction, buttons, with(fingers, pitch, finger), handOn, leftHand, air);
    }

    /** Returns this pin with a place of the hand: the number of the button under the index finger. */
    public Pin handOn(int number) {
        return new Pin(event, direction, buttons, fingers, Integer.valueOf(number), leftHand, air);
    }

    /**
     * Returns this pin with a sound of the left hand.
     *
     * @param stroke 0-based place among the event's wanted sounds
     * @param label what sounds, such as {@code G} or {@code em}, or {@link #SILENCE}
     */
    public Pin leftHand(int stroke, String label) {
        return new Pin(event, direction, buttons, fingers, handOn, with(leftHand, stroke, label), air);
    }

    /** Returns this pin with a use of the air button. */
    public Pin air(AirUse use) {
        return new Pin(event, direction, buttons, fingers, handOn, leftHand, use);
    }

    /** Returns what is fixed in words, such as {@code push, button 2.5, finger 3}; of several with plus signs. */
    public String describe() {
        List<String> words = new ArrayList<>();
        if (direction != null) {
            words.add(direction.label());
        }
        add(words, "button", buttons.values());
        add(words, "finger", fingers.values());
        if (handOn != null) {
            words.add("hand on " + handOn);
        }
        List<String> sounds = leftHand.values().stream()
                .map(label -> label.equals(SILENCE) ? "silent" : label)
                .toList();
        boolean laterStroke = leftHand.size() == 1 && leftHand.firstKey() > 0;
        add(words, laterStroke ? "stroke %d of the left hand".formatted(leftHand.firstKey() + 1) : "left hand", sounds);
        if (air != null) {
            words.add("air " + air.label());
        }
        return words.isEmpty() ? "nothing" : String.join(", ", words);
    }

    private static void add(List<String> words, String what, Collection<?> values) {
        if (!values.isEmpty()) {
            words.add(what + " "
                    + String.join("+", values.stream().map(Object::toString).toList()));
        }
    }

    /** Returns true if the right hand may play so. */
    public boolean allows(Choice choice) {
        boolean way = direction == null || direction == choice.direction();
        boolean place = handOn == null || handOn == choice.handOn();
        return way && place && buttonsAgree(choice) && fingersAgree(choice);
    }

    private boolean buttonsAgree(Choice choice) {
        return buttons.entrySet().stream().allMatch(pinned -> {
            Button button =
                    pinned.getKey() < choice.buttons().size() ? choice.buttons().get(pinned.getKey()) : null;
            return button != null && button.id().equals(pinned.getValue());
        });
    }

    private boolean fingersAgree(Choice choice) {
        return fingers.entrySet().stream()
                .allMatch(pinned -> pinned.getKey() < choice.fingers().size()
                        && choice.fingers().get(pinned.getKey()).equals(pinned.getValue()));
    }

    /** Returns true if the left hand may do that at one of its wanted sounds. */
    boolean allows(int stroke, LeftHandPlay play) {
        String label = leftHand.get(stroke);
        return label == null
                || label.equals(play.sound() == null ? SILENCE : play.sound().label());
    }

    /** Returns true if the air button may be used so. */
    boolean allows(AirUse use) {
        return air == null || air == use;
    }

    private static <V> SortedMap<Integer, V> with(SortedMap<Integer, V> map, int key, V value) {
        SortedMap<Integer, V> changed = new TreeMap<>(map);
        changed.put(key, value);
        return changed;
    }
}
