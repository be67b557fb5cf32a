package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.List;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Sound;
import org.audiveris.proxymusic.YesNo;
import org.bellowscribe.score.Jump;
import org.bellowscribe.score.RoadSigns;
import org.bellowscribe.score.RoadWords;
import org.jspecify.annotations.Nullable;

/** What directions say about the order of play: by sound, by sign or by words alone. */
final class DirectionReader {

    private final RoadMap road;

    DirectionReader(RoadMap road) {
        this.road = road;
    }

    /**
     * Reads a direction.
     *
     * @param measure 0-based index of its measure
     * @param start index of the measure that starts at or after it: the same, or the next one if it stands at the end
     */
    void read(Direction direction, int measure, int start) {
        RoadSigns words = RoadSigns.NONE;
        String all = words(direction);
        words = RoadWords.read(all, words);
        boolean spoken = direction.getSound() != null && read(direction.getSound(), measure, start, words);
        if (!spoken) {
            readWords(words, measure, start);
        }
        if (spoken || words != RoadSigns.NONE) {
            return;
        }
        for (DirectionType type : direction.getDirectionType()) {
            if (!type.getSegno().isEmpty()) {
                road.change(start, old -> old.segno() == null ? old.withSegno("") : old);
            }
            if (!type.getCoda().isEmpty()) {
                road.codaSign(start);
            }
        }
    }

    private void readWords(RoadSigns words, int measure, int start) {
        Jump jump = words.jump();
        if (jump != null) {
            road.jump(measure, jump);
        }
        if (words.fine()) {
            road.change(measure, RoadSigns::withFine);
        }
        String toCoda = words.toCoda();
        if (toCoda != null) {
            road.change(measure, old -> old.withToCoda(toCoda));
        }
        String coda = words.coda();
        if (coda != null) {
            road.change(start, old -> old.coda() == null ? old.withCoda(coda) : old);
        }
        String segno = words.segno();
        if (segno != null) {
            road.change(start, old -> old.segno() == null ? old.withSegno(segno) : old);
        }
    }

    /** Reads a sound and returns true if it says anything about the order of play. */
    boolean read(Sound sound, int measure, int start, RoadSigns words) {
        Jump spelled = words.jump();
        Jump.Goal goal = spelled == null ? Jump.Goal.OPEN : spelled.goal();
        boolean withRepeats = spelled != null && spelled.withRepeats();
        boolean daCapo = sound.getDacapo() == YesNo.YES;
        if (daCapo || sound.getDalsegno() != null) {
            String label = sound.getDalsegno() == null ? "" : sound.getDalsegno();
            road.jump(measure, new Jump(daCapo, label, goal, withRepeats));
        }
        if (sound.getSegno() != null) {
            road.change(start, old -> old.withSegno(sound.getSegno()));
        }
        if (sound.getCoda() != null) {
            road.change(start, old -> old.withCoda(sound.getCoda()));
        }
        if (sound.getTocoda() != null) {
            road.change(measure, old -> old.withToCoda(sound.getTocoda()));
        }
        if (isFine(sound)) {
            road.change(measure, RoadSigns::withFine);
        }
        if (sound.getForwardRepeat() == YesNo.YES) {
            road.change(start, RoadSigns::withRepeatStart);
        }
        return daCapo
                || isFine(sound)
                || sound.getDalsegno() != null
                || sound.getSegno() != null
                || sound.getCoda() != null
                || sound.getTocoda() != null;
    }

    private static boolean isFine(Sound sound) {
        return sound.getFine() != null && !sound.getFine().equals("no");
    }

    /** Returns the words of a direction, joined by spaces; empty if it has none. */
    static String words(Direction direction) {
        List<String> words = new ArrayList<>();
        for (DirectionType type : direction.getDirectionType()) {
            for (Object each : type.getWordsOrSymbol()) {
                @Nullable String value = each instanceof FormattedTextId text ? text.getValue() : null;
                if (value != null && !value.isBlank()) {
                    words.add(value.strip());
                }
            }
        }
        return String.join(" ", words);
    }
}
