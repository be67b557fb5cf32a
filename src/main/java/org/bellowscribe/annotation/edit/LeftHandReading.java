package org.bellowscribe.annotation.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.accompaniment.HarmonyOption;
import org.bellowscribe.accompaniment.LeftHandFit;
import org.bellowscribe.accompaniment.WantedSound;
import org.bellowscribe.annotation.MarkAspect;
import org.bellowscribe.annotation.style.LeftHandLabels;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Task;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** Reads the letters of the left hand: lays them out over the moments at which it should sound, the earliest first. */
final class LeftHandReading {

    private record Slot(Event event, int stroke, Fraction time, WantedSound wanted) {}

    private final Task task;
    private final Style style;
    private final LeftHandLabels labels;

    LeftHandReading(Task task, Style style) {
        this.task = task;
        this.style = style;
        labels = style.leftHand();
    }

    /**
     * Reads a text without sign.
     *
     * @param events the event that carries it and the rests behind that belong to it
     */
    ReadMark read(List<Event> events, String text) {
        int event = events.get(0).index();
        List<Slot> slots = slots(events);
        String letters = text.equals(style.filler()) ? "" : text.replace(" ", "");
        List<String> sounds = sounds(slots, letters);
        if (slots.isEmpty() || sounds == null) {
            String fit = slots.isEmpty()
                    ? "stands where the left hand plays nothing"
                    : "means no sounds that the left hand has and that go with the harmony here (%d at most)"
                            .formatted(slots.size());
            return ReadMark.unread(event, MarkAspect.LEFT_HAND, text, fit, advice(slots));
        }
        SortedMap<Integer, Pin> pins = new TreeMap<>();
        for (int i = 0; i < sounds.size(); i++) {
            Slot slot = slots.get(i);
            int index = slot.event().index();
            pins.put(index, pins.getOrDefault(index, Pin.at(index)).leftHand(slot.stroke(), sounds.get(i)));
        }
        return ReadMark.of(MarkAspect.LEFT_HAND, text, event, List.copyOf(pins.values()));
    }

    // Of a text that goes on alike only what is written is read.
    private @Nullable List<String> sounds(List<Slot> slots, String letters) {
        if (!letters.endsWith(labels.andSoOn())) {
            return parse(slots, 0, letters, Fraction.ZERO, true);
        }
        String written =
                letters.substring(0, letters.length() - labels.andSoOn().length());
        List<String> sounds = null;
        for (int told = 1; told <= slots.size() && sounds == null; told++) {
            sounds = parse(slots.subList(0, told), 0, written, Fraction.ZERO, true);
        }
        return sounds;
    }

    private List<Slot> slots(List<Event> events) {
        Fraction start = events.get(0).onset();
        List<Slot> slots = new ArrayList<>();
        for (Event event : events) {
            int stroke = 0;
            for (WantedSound wanted : task.wanted()) {
                if (wanted.event() == event.index()) {
                    slots.add(new Slot(event, stroke, event.onset().minus(start).plus(wanted.offset()), wanted));
                    stroke++;
                }
            }
        }
        return slots;
    }

    // What each moment from one on sounds; null if the text cannot be laid out.
    private @Nullable List<String> parse(List<Slot> slots, int at, String text, Fraction last, boolean first) {
        if (at == slots.size()) {
            return text.isEmpty() ? List.of() : null;
        }
        Slot slot = slots.get(at);
        String before = !slot.time().equals(last) ? labels.then() : first ? "" : labels.together();
        for (LeftHandSound sound : sounds(slot.wanted())) {
            for (String twin : List.of(labels.pulledTwin(), "")) {
                String written = before + labels.label(sound) + twin;
                List<String> rest = text.startsWith(written)
                        ? parse(slots, at + 1, text.substring(written.length()), slot.time(), false)
                        : null;
                if (rest != null) {
                    return joined(sound.label(), rest);
                }
            }
        }
        List<String> rest = parse(slots, at + 1, text, last, first);
        return rest == null ? null : joined(Pin.SILENCE, rest);
    }

    private static List<String> joined(String first, List<String> rest) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(rest);
        return all;
    }

    private List<LeftHandSound> sounds(WantedSound wanted) {
        List<LeftHandSound> sounds = new ArrayList<>();
        for (LeftHandButton button : task.instrument().leftHand()) {
            for (BellowsDirection direction : BellowsDirection.values()) {
                LeftHandSound sound = button.sound(direction);
                if (sound != null && !sounds.contains(sound) && fits(wanted, sound)) {
                    sounds.add(sound);
                }
            }
        }
        sounds.sort(Comparator.naturalOrder());
        return sounds;
    }

    private static boolean fits(WantedSound wanted, LeftHandSound sound) {
        for (HarmonyOption harmony : wanted.harmonies()) {
            if (LeftHandFit.of(wanted, harmony.chord(), sound) != null) {
                return true;
            }
        }
        return false;
    }

    private String advice(List<Slot> slots) {
        if (slots.isEmpty()) {
            return "Maybe take the letters away, or write them at the note before.";
        }
        List<String> each = slots.stream()
                .map(slot -> String.join(
                        " or ",
                        sounds(slot.wanted()).stream().map(labels::label).toList()))
                .toList();
        return "Maybe %s; or %s for silence.".formatted(String.join(", then ", each), style.filler());
    }
}
