package org.bellowscribe.instrument;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.theory.Pitch;
import org.bellowscribe.theory.PitchClass;

/** Looks for what is probably wrong in an instrument that somebody wrote down: one remark for each doubt. */
public final class InstrumentCheck {

    private static final Pitch LOWEST = Pitch.parse("C2");
    private static final Pitch HIGHEST = Pitch.parse("C8");
    private static final List<Integer> SCALE = List.of(0, 2, 4, 5, 7, 9, 11);

    private final Instrument instrument;
    private final List<Diagnostic> remarks = new ArrayList<>();

    private InstrumentCheck(Instrument instrument) {
        this.instrument = instrument;
    }

    /** Returns the doubts: an error for what cannot be, warnings for what is unusual; empty if there is none. */
    public static List<Diagnostic> of(Instrument instrument) {
        InstrumentCheck check = new InstrumentCheck(instrument);
        check.places();
        check.buttons();
        check.rows();
        check.scales();
        check.leftHand();
        return List.copyOf(check.remarks);
    }

    /**
     * Returns the doubts about single buttons of an instrument that was read in part only: what is missing may stand in
     * the rest.
     */
    public static List<Diagnostic> ofPart(Instrument instrument) {
        InstrumentCheck check = new InstrumentCheck(instrument);
        check.places();
        check.buttons();
        check.rows();
        return List.copyOf(check.remarks);
    }

    private void places() {
        Set<String> melody = new TreeSet<>();
        for (Button button : instrument.buttons()) {
            if (!melody.add(button.id())) {
                remarks.add(Diagnostic.error(
                        DiagnosticCode.BAD_DEFINITION,
                        Place.FILE,
                        "%s is there twice.".formatted(name(button)),
                        "Maybe give one of them another number."));
            }
        }
        Set<String> left = new TreeSet<>();
        for (LeftHandButton button : instrument.leftHand()) {
            if (!left.add(button.id())) {
                remarks.add(Diagnostic.error(
                        DiagnosticCode.BAD_DEFINITION,
                        Place.FILE,
                        "Button %d of left-hand column %d is there twice.".formatted(button.number(), button.column()),
                        "Maybe give one of them another number."));
            }
        }
    }

    private void buttons() {
        for (Button button : instrument.buttons()) {
            if (button.push() == null && button.pull() == null) {
                warn("%s is silent both ways.".formatted(name(button)), "Maybe its notes are missing.");
            }
            for (BellowsDirection direction : BellowsDirection.values()) {
                Pitch pitch = button.pitch(direction);
                if (pitch != null && (pitch.compareTo(LOWEST) < 0 || pitch.compareTo(HIGHEST) > 0)) {
                    warn(
                            "%s sounds %s on the %s, outside %s to %s."
                                    .formatted(name(button), pitch, direction.label(), LOWEST, HIGHEST),
                            "Maybe the octave is wrong: C4 is middle C.");
                }
            }
        }
    }

    /** In a row that has a key the notes rise from button to button; an octave written wrongly breaks that. */
    private void rows() {
        for (int row : HomeKeys.of(instrument).keySet()) {
            List<Button> buttons = instrument.buttons().stream()
                    .filter(button -> button.row() == row)
                    .toList();
            for (BellowsDirection direction : BellowsDirection.values()) {
                for (int i = 1; i + 1 < buttons.size(); i++) {
                    neighbors(buttons.subList(i - 1, i + 2), direction);
                }
            }
        }
    }

    private void neighbors(List<Button> three, BellowsDirection direction) {
        Pitch before = three.get(0).pitch(direction);
        Pitch pitch = three.get(1).pitch(direction);
        Pitch after = three.get(2).pitch(direction);
        if (before == null || pitch == null || after == null || before.compareTo(after) >= 0) {
            return;
        }
        if (pitch.compareTo(before) < 0 || pitch.compareTo(after) > 0) {
            warn(
                    "%s sounds %s on the %s, which does not lie between its neighbors %s and %s."
                            .formatted(name(three.get(1)), pitch, direction.label(), before, after),
                    "Maybe the octave is wrong: C4 is middle C.");
        }
    }

    private void scales() {
        Set<PitchClass> sounding = instrument.buttons().stream()
                .flatMap(button -> Stream.of(button.push(), button.pull()))
                .filter(Objects::nonNull)
                .map(pitch -> Objects.requireNonNull(pitch).pitchClass())
                .collect(Collectors.toCollection(TreeSet::new));
        HomeKeys.of(instrument).forEach((row, tonic) -> {
            List<PitchClass> missing = SCALE.stream()
                    .map(tonic::plus)
                    .filter(note -> !sounding.contains(note))
                    .toList();
            if (!missing.isEmpty()) {
                warn(
                        "No button gives %s, which the scale of %s (row %d) needs."
                                .formatted(words(missing), tonic, row),
                        "Maybe a note of row %d is wrong.".formatted(row));
            }
        });
    }

    private void leftHand() {
        if (instrument.leftHand().isEmpty()) {
            return;
        }
        for (BellowsDirection direction : BellowsDirection.values()) {
            for (LeftHandKind kind : LeftHandKind.values()) {
                if (instrument.leftHand().stream().noneMatch(button -> sounds(button, kind, direction))) {
                    warn(
                            "The left hand has no %s on the %s.".formatted(kind.label(), direction.label()),
                            "Maybe the left-hand %s is missing.".formatted(direction.label()));
                }
            }
        }
        homeBasses();
    }

    /** On boxes with rows a semitone apart only one of the home keys has basses, but one must. */
    private void homeBasses() {
        Collection<PitchClass> keys = HomeKeys.of(instrument).values();
        boolean found = keys.stream()
                .map(tonic -> DegreeBasses.of(instrument, tonic, Third.MAJOR))
                .anyMatch(basses -> !basses.bass().isEmpty() || !basses.chord().isEmpty());
        if (!found && !keys.isEmpty()) {
            warn(
                    "The left hand has neither bass nor chord for %s, the home keys."
                            .formatted(words(List.copyOf(keys))),
                    "Maybe the left hand belongs to another instrument.");
        }
    }

    private static boolean sounds(LeftHandButton button, LeftHandKind kind, BellowsDirection direction) {
        LeftHandSound sound = button.sound(direction);
        return sound != null && sound.kind() == kind;
    }

    private static String words(List<PitchClass> notes) {
        return IntStream.range(0, notes.size())
                .mapToObj(i -> (i == 0 ? "" : i == notes.size() - 1 ? " and " : ", ") + notes.get(i))
                .collect(Collectors.joining());
    }

    private static String name(Button button) {
        return "Button %d of row %d".formatted(button.number(), button.row());
    }

    private void warn(String text, String advice) {
        remarks.add(Diagnostic.warning(DiagnosticCode.BAD_DEFINITION, Place.FILE, text, advice));
    }
}
