package org.bellowscribe.musicxml.read;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Metronome;
import org.audiveris.proxymusic.Sound;
import org.bellowscribe.theory.Fraction;
import org.jspecify.annotations.Nullable;

/** Tempo: what the sound element says, else the metronome mark. */
final class TempoReader {

    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}(?:[.,]\\d{1,3})?");

    private TempoReader() {}

    /** Returns quarter notes a minute, or null if the direction gives no tempo. */
    static @Nullable Double read(Direction direction) {
        Double sound = direction.getSound() == null ? null : read(direction.getSound());
        return sound == null ? read(direction.getDirectionType()) : sound;
    }

    /** Returns quarter notes a minute, or null if the sound gives no tempo. */
    static @Nullable Double read(Sound sound) {
        BigDecimal tempo = sound.getTempo();
        return tempo == null ? null : tempo.doubleValue();
    }

    private static @Nullable Double read(List<DirectionType> types) {
        for (DirectionType type : types) {
            Double tempo = type.getMetronome() == null ? null : read(type.getMetronome());
            if (tempo != null) {
                return tempo;
            }
        }
        return null;
    }

    private static @Nullable Double read(Metronome metronome) {
        if (metronome.getBeatUnit() == null || metronome.getPerMinute() == null) {
            return null;
        }
        String text = metronome.getPerMinute().getValue();
        Matcher matcher = NUMBER.matcher(text == null ? "" : text);
        if (!matcher.find()) {
            return null;
        }
        Fraction beat = DurationReader.dotted(
                DurationReader.quarters(metronome.getBeatUnit()),
                metronome.getBeatUnitDot().size());
        return Double.parseDouble(matcher.group().replace(',', '.')) * beat.toDouble();
    }
}
