package org.bellowscribe.solver.pin;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Task;
import org.jspecify.annotations.Nullable;

/** What an entry fixes of the left hand. */
final class LeftHandPin {

    private static final String SILENT = "silent";

    private final Task task;
    private final DefinitionElement entry;
    private final List<WantedSound> wanted;

    LeftHandPin(Task task, Event event, DefinitionElement entry) {
        this.task = task;
        this.entry = entry;
        wanted = task.wanted().stream()
                .filter(sound -> sound.event() == event.index())
                .toList();
    }

    Pin on(Pin pin) throws DiagnosedException {
        String text = entry.attribute("left-hand");
        if (text == null) {
            return pin;
        }
        List<String> sounds = List.of(text.split(" "));
        boolean allSilent = sounds.equals(List.of(SILENT));
        if (wanted.isEmpty()) {
            throw BadPin.of(entry, "The left hand plays nothing at this note.", nothingWanted());
        }
        if (!allSilent && sounds.size() != wanted.size()) {
            throw BadPin.of(
                    entry,
                    "The left hand plays %d times during this note, and the pin names %d sounds."
                            .formatted(wanted.size(), sounds.size()),
                    "Maybe name one sound for each, with spaces between, or silent alone.");
        }
        Pin pinned = pin;
        for (int stroke = 0; stroke < wanted.size(); stroke++) {
            String sound = allSilent ? SILENT : sounds.get(stroke);
            check(sound, wanted.get(stroke), pin.direction());
            pinned = pinned.leftHand(stroke, sound.equals(SILENT) ? Pin.SILENCE : sound);
        }
        return pinned;
    }

    private String nothingWanted() {
        return task.wanted().isEmpty()
                ? "Maybe add left-hand to --marks, or choose an instrument with basses."
                : "Maybe pin the note before it at which it does.";
    }

    private void check(String sound, WantedSound want, @Nullable BellowsDirection direction) throws DiagnosedException {
        List<String> possible = new ArrayList<>();
        for (BellowsDirection way : BellowsDirection.values()) {
            for (LeftHandButton button : task.instrument().leftHand()) {
                LeftHandSound given = button.sound(way);
                if (given == null || !fits(given, want)) {
                    continue;
                }
                if (given.label().equals(sound) && (direction == null || direction == way)) {
                    return;
                }
                possible.add("%s on the %s".formatted(given.label(), way.label()));
            }
        }
        if (!sound.equals(SILENT)) {
            possible.add(SILENT);
            throw BadPin.of(
                    entry,
                    "The left hand cannot play %s here%s: it is not on the instrument so, or does not go with the harmony."
                            .formatted(sound, direction == null ? "" : " on the " + direction.label()),
                    "Maybe %s; or write another chord symbol into the score.".formatted(String.join(" or ", possible)));
        }
    }

    private static boolean fits(LeftHandSound sound, WantedSound want) {
        for (HarmonyOption harmony : want.harmonies()) {
            if (LeftHandFit.of(want, harmony.chord(), sound) != null) {
                return true;
            }
        }
        return false;
    }
}
