package org.bellowscribe.musicxml.read;

import jakarta.xml.bind.JAXBElement;
import java.math.BigInteger;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.ClefSign;
import org.audiveris.proxymusic.Key;
import org.audiveris.proxymusic.MeasureStyle;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.Transpose;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.Mode;
import org.jspecify.annotations.Nullable;

/** Time, key, transposition and repeat-the-measure signs: what holds until the next attributes. */
final class AttributeReader {

    private final int staff;
    private @Nullable TimeSignature time;
    private @Nullable Key key;
    private boolean free;
    private int transposition;
    private boolean repeatsLast;
    private final Set<Integer> drumStaves = new HashSet<>();
    private final Staves staves;

    /**
     * Creates a reader.
     *
     * @param staff the staff whose attributes count where staves differ
     * @param staves told the clefs
     */
    AttributeReader(int staff, Staves staves) {
        this.staff = staff;
        this.staves = staves;
    }

    void read(Attributes attributes, Cursor cursor) {
        if (attributes.getDivisions() != null) {
            cursor.divisions(attributes.getDivisions());
        }
        for (Transpose each : attributes.getTranspose()) {
            if (counts(each.getNumber())) {
                int chromatic =
                        each.getChromatic() == null ? 0 : each.getChromatic().intValue();
                int octaves = each.getOctaveChange() == null
                        ? 0
                        : each.getOctaveChange().intValue();
                transposition = chromatic + 12 * octaves;
            }
        }
        for (Key each : attributes.getKey()) {
            key = counts(each.getNumber()) ? each : key;
        }
        for (Time each : attributes.getTime()) {
            if (counts(each.getNumber())) {
                read(each);
            }
        }
        for (Clef each : attributes.getClef()) {
            int on = each.getNumber() == null ? 1 : each.getNumber().intValue();
            if (each.getSign() != null) {
                staves.clef(on, each.getSign());
            }
            if (each.getSign() == ClefSign.PERCUSSION) {
                drumStaves.add(on);
            } else {
                drumStaves.remove(on);
            }
        }
        for (MeasureStyle style : attributes.getMeasureStyle()) {
            if (style.getMeasureRepeat() != null) {
                repeatsLast = style.getMeasureRepeat().getType() != StartStop.STOP;
            }
        }
    }

    private boolean counts(@Nullable BigInteger number) {
        return number == null || number.intValue() == staff;
    }

    private void read(Time written) {
        free = written.getSenzaMisura() != null;
        TimeSignature sum = sum(written.getTimeSignature());
        time = sum == null ? time : sum;
    }

    /** Adds up signatures such as 3/8+2/4; returns null if there is none of a sensible size. */
    private static @Nullable TimeSignature sum(List<JAXBElement<String>> values) {
        Fraction length = Fraction.ZERO;
        int finest = 1;
        int beats = 0;
        for (JAXBElement<String> value : values) {
            int number = plus(value.getValue());
            if (value.getName().getLocalPart().equals("beats")) {
                beats = number;
            } else if (number > 0) {
                length = length.plus(Fraction.of(beats, number));
                finest = Math.max(finest, number);
            }
        }
        Fraction count = length.times(Fraction.of(finest, 1));
        boolean sensible =
                count.denominator() == 1 && count.numerator() >= 1 && count.numerator() <= 128 && finest <= 128;
        return sensible ? new TimeSignature((int) count.numerator(), finest) : null;
    }

    private static int plus(String value) {
        int sum = 0;
        for (String each : value.split("\\+", -1)) {
            sum += Integer.parseInt(each.strip());
        }
        return sum;
    }

    @Nullable
    TimeSignature time() {
        return time;
    }

    boolean free() {
        return free;
    }

    int transposition() {
        return transposition;
    }

    /** Returns true if a staff has a percussion clef. */
    boolean isDrums(int number) {
        return drumStaves.contains(number);
    }

    boolean repeatsLast() {
        return repeatsLast;
    }

    /** Returns the key as it sounds, or null if there is none or an unusual one. */
    @Nullable
    KeySignature key() {
        if (key == null || key.getFifths() == null) {
            return null;
        }
        int fifths = key.getFifths().intValue();
        int sounding = transposition % 12 == 0 ? fifths : Math.floorMod(fifths + 7 * transposition + 5, 12) - 5;
        return new KeySignature(Math.max(-7, Math.min(7, sounding)), mode(key.getMode()));
    }

    private static @Nullable Mode mode(@Nullable String text) {
        if (text == null) {
            return null;
        }
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "major", "ionian" -> Mode.MAJOR;
            case "minor", "aeolian" -> Mode.MINOR;
            case "dorian" -> Mode.DORIAN;
            case "phrygian" -> Mode.PHRYGIAN;
            case "lydian" -> Mode.LYDIAN;
            case "mixolydian" -> Mode.MIXOLYDIAN;
            case "locrian" -> Mode.LOCRIAN;
            default -> null;
        };
    }
}
