package org.bellowscribe.instrument;

import java.util.List;

/**
 * An instrument: melody buttons, left hand, bellows and air.
 *
 * @param id short id in kebab-case, such as {@code dg-21}
 * @param name name for people, such as {@code D/G, 21 buttons}
 * @param buttons melody buttons, by row, then number
 * @param leftHand left-hand buttons, by column, then number; empty if there is no bass side
 * @param bellows bellows and air button
 * @param air how much air the reeds take
 * @param alsoFor other boxes for which what is decided on this one holds too; usually none
 */
public record Instrument(
        String id,
        String name,
        List<Button> buttons,
        List<LeftHandButton> leftHand,
        Bellows bellows,
        AirModel air,
        List<OtherBox> alsoFor) {

    /** Copies the lists. */
    public Instrument {
        buttons = List.copyOf(buttons);
        leftHand = List.copyOf(leftHand);
        alsoFor = List.copyOf(alsoFor);
    }

    /** Creates an instrument that stands for no other. */
    public Instrument(
            String id,
            String name,
            List<Button> buttons,
            List<LeftHandButton> leftHand,
            Bellows bellows,
            AirModel air) {
        this(id, name, buttons, leftHand, bellows, air, List.of());
    }

    /** Returns how it is held. */
    public Grip grip() {
        return Grip.of(buttons);
    }

    /** Returns the number of rows. */
    public int rows() {
        return buttons.stream().mapToInt(Button::row).max().orElse(0);
    }
}
