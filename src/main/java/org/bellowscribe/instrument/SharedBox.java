package org.bellowscribe.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes the box that several boxes have in common, so that what is decided on it can be played on all of them. */
public final class SharedBox {

    private SharedBox() {}

    /**
     * Returns a box with nothing on it but what others have too.
     *
     * @param own the box whose numbers are meant
     * @param others the other boxes
     */
    public static Instrument of(Instrument own, List<OtherBox> others) {
        List<Button> buttons = new ArrayList<>();
        for (Button button : own.buttons()) {
            buttons.add(new Button(
                    button.row(),
                    button.number(),
                    has(others, button, BellowsDirection.PUSH) ? button.push() : null,
                    has(others, button, BellowsDirection.PULL) ? button.pull() : null,
                    button.hand()));
        }
        List<LeftHandButton> leftHand = new ArrayList<>();
        for (LeftHandButton button : own.leftHand()) {
            leftHand.add(new LeftHandButton(
                    button.column(),
                    button.number(),
                    shared(others, button, BellowsDirection.PUSH),
                    shared(others, button, BellowsDirection.PULL)));
        }
        String name = "%s and %s alike"
                .formatted(
                        own.name(),
                        others.stream().map(other -> other.other().id()).collect(Collectors.joining(", ")));
        return new Instrument(own.id(), name, buttons, leftHand, own.bellows(), own.air(), others);
    }

    private static boolean has(List<OtherBox> others, Button button, BellowsDirection direction) {
        return others.stream().allMatch(other -> other.has(button, direction));
    }

    private static @Nullable LeftHandSound shared(
            List<OtherBox> others, LeftHandButton button, BellowsDirection direction) {
        LeftHandSound sound = button.sound(direction);
        return sound != null && others.stream().allMatch(other -> other.has(sound, direction)) ? sound : null;
    }
}
