package org.bellowscribe.solver;

import java.util.ArrayList;
import java.util.List;

/**
 * All that a teacher has fixed in a tune. Of several pins at one event all hold.
 *
 * @param list the pins, in any order
 */
public record Pins(List<Pin> list) {

    /** Nothing is fixed. */
    public static final Pins NONE = new Pins(List.of());

    /** Copies the list. */
    public Pins {
        list = List.copyOf(list);
    }

    /** Returns true if nothing is fixed. */
    public boolean isEmpty() {
        return list.isEmpty();
    }

    /** Returns these pins and one more. */
    public Pins plus(Pin pin) {
        List<Pin> more = new ArrayList<>(list);
        more.add(pin);
        return new Pins(more);
    }

    /** Returns these pins but one. */
    public Pins without(Pin pin) {
        List<Pin> fewer = new ArrayList<>(list);
        fewer.remove(pin);
        return new Pins(fewer);
    }

    /** Returns the pins of one event. */
    public Pins at(int event) {
        return isEmpty()
                ? NONE
                : new Pins(list.stream().filter(pin -> pin.event() == event).toList());
    }

    /** Returns true if a choice of the right hand agrees with all pins. */
    public boolean allows(Choice choice) {
        return list.stream().allMatch(pin -> pin.allows(choice));
    }

    /** Returns true if what the left hand does at a stroke (0-based) agrees with all pins. */
    public boolean allows(int stroke, LeftHandPlay play) {
        return list.stream().allMatch(pin -> pin.allows(stroke, play));
    }

    /** Returns true if a use of the air button agrees with all pins. */
    public boolean allows(AirUse use) {
        return list.stream().allMatch(pin -> pin.allows(use));
    }
}
