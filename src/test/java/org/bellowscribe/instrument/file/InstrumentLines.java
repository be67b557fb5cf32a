package org.bellowscribe.instrument.file;

import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/** Writes instruments as short lines to compare. */
final class InstrumentLines {

    private InstrumentLines() {}

    /** Returns an instrument of the library or of a file; a test that names a missing one fails. */
    static Instrument find(String idOrFile) {
        try {
            return InstrumentLibrary.find(idOrFile);
        } catch (DiagnosedException e) {
            throw new AssertionError(e.diagnostics().toString(), e);
        }
    }

    /** Returns the melody buttons as {@code row.number push pull}. */
    static List<String> buttons(Instrument instrument) {
        return instrument.buttons().stream()
                .map(button -> "%s %s %s".formatted(button.id(), text(button.push()), text(button.pull())))
                .toList();
    }

    /** Returns the left-hand buttons as {@code column.number push pull} in the letters of the trade. */
    static List<String> leftHand(Instrument instrument) {
        return instrument.leftHand().stream()
                .map(button -> "%s %s %s".formatted(button.id(), text(button.push()), text(button.pull())))
                .toList();
    }

    /**
     * Returns what buttons sound.
     *
     * @param places {@code row.number} each, with {@code '} after it for the pull
     */
    static String sounds(Instrument instrument, String places) {
        StringBuilder names = new StringBuilder();
        for (String place : places.split(" ", -1)) {
            boolean pull = place.endsWith("'");
            String id = pull ? place.substring(0, place.length() - 1) : place;
            Button button = instrument.buttons().stream()
                    .filter(candidate -> candidate.id().equals(id))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no button " + id));
            names.append(names.isEmpty() ? "" : " ").append(text(pull ? button.pull() : button.push()));
        }
        return names.toString();
    }

    private static String text(@Nullable Pitch pitch) {
        return pitch == null ? "-" : pitch.toString();
    }

    private static String text(@Nullable LeftHandSound sound) {
        return sound == null ? "-" : sound.label();
    }
}
