package org.bellowscribe.edition;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.Step;

/** Finds which notes of the box some tunes use. */
final class UsedButtons {

    private final Set<String> melody = new HashSet<>();
    private final Set<String> leftHand = new HashSet<>();

    private UsedButtons() {}

    /** Returns the instrument with the notes that are used in an edition alone; every button is still there. */
    static Instrument of(Edition edition) {
        UsedButtons used = new UsedButtons();
        edition.tunes().forEach(tune -> tune.tune().solution().steps().forEach(used::add));
        return used.on(edition.instrument());
    }

    private void add(Step step) {
        step.buttons().forEach(button -> melody.add(key(button.id(), step.direction())));
        step.leftHand().stream()
                .map(LeftHandPlay::button)
                .filter(button -> button != null)
                .forEach(button -> leftHand.add(key(button.id(), step.direction())));
    }

    private Instrument on(Instrument box) {
        List<Button> buttons = box.buttons().stream().map(this::used).toList();
        List<LeftHandButton> basses = box.leftHand().stream().map(this::used).toList();
        return new Instrument(box.id(), box.name(), buttons, basses, box.bellows(), box.air());
    }

    private Button used(Button button) {
        boolean push = melody.contains(key(button.id(), BellowsDirection.PUSH));
        boolean pull = melody.contains(key(button.id(), BellowsDirection.PULL));
        return new Button(
                button.row(), button.number(), push ? button.push() : null, pull ? button.pull() : null, button.hand());
    }

    private LeftHandButton used(LeftHandButton button) {
        boolean push = leftHand.contains(key(button.id(), BellowsDirection.PUSH));
        boolean pull = leftHand.contains(key(button.id(), BellowsDirection.PULL));
        return new LeftHandButton(
                button.column(), button.number(), push ? button.push() : null, pull ? button.pull() : null);
    }

    private static String key(String button, BellowsDirection direction) {
        return button + direction.label();
    }
}
