package org.bellowscribe.learning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.bellowscribe.Shared;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Task;

/** The blind markings of {@code ../shared/facts/teachers} as pins: one row a note, in the order of the sheet. */
final class TeachersMarks {

    private static final int PITCH = 5;
    private static final int BUTTON = 8;
    private static final int FINGER = 9;
    private static final int AIR = 10;
    private static final int LEFT_HAND = 11;

    private TeachersMarks() {}

    /** Returns the marked tunes of a folder: {@code first} or {@code second}. */
    static List<TaughtTune> of(String folder) throws IOException {
        List<TaughtTune> tunes = new ArrayList<>();
        for (Path score : Shared.scores("corpus/tunes")) {
            String stem = String.valueOf(score.getFileName()).replaceFirst("\\.[^.]*$", "");
            Path marks = Shared.path("facts/teachers/" + folder).resolve(stem + ".csv");
            Task task = Files.exists(marks) ? MarkedBook.task(score) : null;
            if (task != null) {
                tunes.add(new TaughtTune(stem, task, pins(task, Files.readAllLines(marks))));
            }
        }
        return tunes;
    }

    private static Pins pins(Task task, List<String> lines) {
        List<Pin> pins = new ArrayList<>();
        List<String> rows = lines.stream()
                .filter(line -> !line.startsWith("#") && !line.startsWith("note,"))
                .toList();
        for (int e = 0; e < rows.size(); e++) {
            String[] cells = rows.get(e).split(",", -1);
            if (!cells[0].equals("rest") && !cells[PITCH].isEmpty()) {
                pins.add(pin(task, e, cells));
            }
        }
        return new Pins(pins);
    }

    private static Pin pin(Task task, int event, String[] cells) {
        String[] buttons = cells[BUTTON].strip().split("\\s+");
        BellowsDirection way = cells[BUTTON].contains(">") ? BellowsDirection.PUSH : BellowsDirection.PULL;
        String air = cells[AIR].strip();
        Pin pin = Pin.at(event)
                .direction(way)
                .air(air.isEmpty() ? AirUse.NONE : AirUse.valueOf(air.toUpperCase(Locale.ROOT)));
        for (int i = 0; i < buttons.length; i++) {
            pin = pin.button(i, buttons[i].replaceAll("[<>]", ""));
        }
        String[] fingers = cells[FINGER].strip().split("\\s+");
        for (int i = 0; i < fingers.length && !fingers[i].isEmpty(); i++) {
            pin = pin.finger(i, Integer.parseInt(fingers[i]));
        }
        return leftHand(task, pin, cells[LEFT_HAND].strip().split("[\\s·]+"));
    }

    // Strokes count where there are as many as are wanted, and what sounds can stand in for what is wanted.
    private static Pin leftHand(Task task, Pin marked, String[] strokes) {
        Pin pin = marked;
        List<WantedSound> wanted = task.wanted().stream()
                .filter(sound -> sound.event() == marked.event())
                .toList();
        for (int i = 0; i < strokes.length && strokes.length == wanted.size(); i++) {
            if (strokes[i].equals("-")) {
                pin = pin.leftHand(i, Pin.SILENCE);
            } else if (canSound(task, pin, wanted.get(i), strokes[i])) {
                pin = pin.leftHand(i, strokes[i]);
            }
        }
        return pin;
    }

    private static boolean canSound(Task task, Pin pin, WantedSound wanted, String label) {
        for (LeftHandButton button : task.instrument().leftHand()) {
            LeftHandSound sound = pin.direction() == null ? null : button.sound(pin.direction());
            for (HarmonyOption option : wanted.harmonies()) {
                if (sound != null
                        && sound.label().equals(label)
                        && LeftHandFit.of(wanted, option.chord(), sound) != null) {
                    return true;
                }
            }
        }
        return false;
    }
}
