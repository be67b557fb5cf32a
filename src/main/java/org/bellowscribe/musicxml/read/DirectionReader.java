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

/**
 * What directions say about the order of play: by sound, else by words, else by sign. A jump or fine holds at the end of
 * its measure, wherever in it the sign stands.
 */
final class DirectionReader {

    private final RoadMap road;

    DirectionReader(RoadMap road) {
        this.road = road;
    }

    void read(Direction direction, Moment at) {
        Jump.Goal goal = RoadWords.goal(words(direction));
        if (goal != null
                && (direction.getSound() == null
                        || signs(direction.getSound(), null).equals(RoadSigns.NONE))) {
            road.goal(at.measure(), goal);
            return;
        }
        RoadSigns words = RoadWords.read(words(direction), RoadSigns.NONE);
        if (direction.getSound() != null && read(direction.getSound(), at, words)) {
            return;
        }
        if (!words.equals(RoadSigns.NONE)) {
            readSigns(words, at, false);
            return;
        }
        for (DirectionType type : direction.getDirectionType()) {
            if (!type.getSegno().isEmpty()) {
                road.segno(at.start(), "");
            }
            if (!type.getCoda().isEmpty()) {
                road.codaSign(at.start(), at.measure());
            }
        }
    }

    /** Reads a sound that stands alone. */
    void read(Sound sound, Moment at) {
        read(sound, at, RoadSigns.NONE);
    }

    private boolean read(Sound sound, Moment at, RoadSigns words) {
        RoadSigns signs = departing(signs(sound, words.jump()), words);
        if (sound.getForwardRepeat() == YesNo.YES) {
            road.change(at.start(), RoadSigns::withRepeatStart);
        }
        boolean early = signs.toCoda() != null && at.first() && at.measure() > 0;
        if (early) {
            road.remark(
                    at.measure(),
                    "The departure to the coda stands at the start of measure %d; it is taken before it.");
        }
        List<Integer> times = BarlineReader.numbers(sound.getTimeOnly(), null);
        if (!times.isEmpty() && (signs.jump() != null || signs.fine() || signs.toCoda() != null)) {
            road.change(early ? at.measure() - 1 : at.measure(), old -> old.withTimes(times));
        }
        readSigns(signs, early ? new Moment(at.measure() - 1, at.start(), false, 0) : at, true);
        return !signs.equals(RoadSigns.NONE);
    }

    // Some programs give the departure the sound of the coda itself; the words tell.
    private static RoadSigns departing(RoadSigns signs, RoadSigns words) {
        String coda = signs.coda();
        return coda != null && words.toCoda() != null && signs.toCoda() == null
                ? signs.withCoda(null).withToCoda(coda)
                : signs;
    }

    private static RoadSigns signs(Sound sound, @Nullable Jump spelled) {
        RoadSigns signs = RoadSigns.NONE;
        boolean daCapo = sound.getDacapo() == YesNo.YES;
        if (daCapo || sound.getDalsegno() != null) {
            Jump.Goal goal = spelled == null ? Jump.Goal.OPEN : spelled.goal();
            String label = sound.getDalsegno() == null ? "" : sound.getDalsegno();
            signs = signs.withJump(new Jump(daCapo, label, goal, spelled != null && spelled.withRepeats()));
        }
        signs = sound.getSegno() == null ? signs : signs.withSegno(sound.getSegno());
        signs = sound.getCoda() == null ? signs : signs.withCoda(sound.getCoda());
        signs = sound.getTocoda() == null ? signs : signs.withToCoda(sound.getTocoda());
        boolean fine = sound.getFine() != null && !sound.getFine().equals("no");
        return fine ? signs.withFine() : signs;
    }

    private void readSigns(RoadSigns signs, Moment at, boolean sounds) {
        Jump jump = signs.jump();
        if (jump != null) {
            remarkCut(jump.toString(), at, sounds);
            road.jump(at.measure(), jump);
        }
        if (signs.fine()) {
            remarkCut("fine", at, sounds);
            road.change(at.measure(), RoadSigns::withFine);
        }
        String toCoda = signs.toCoda();
        if (toCoda != null) {
            remarkCut("departure to the coda", at, sounds);
            road.toCoda(at.measure(), toCoda);
        }
        String coda = signs.coda();
        if (coda != null) {
            road.coda(at.start(), coda, at.measure());
        }
        String segno = signs.segno();
        if (segno != null) {
            road.segno(at.start(), segno);
        }
    }

    private void remarkCut(String sign, Moment at, boolean sounds) {
        if (at.cuts(sounds)) {
            road.remark(at.measure(), "The " + sign + " stands inside measure %d; the measure is played to its end.");
        }
    }

    /** Returns the words of a direction, joined by spaces; empty if it has none. */
    static String words(Direction direction) {
        List<String> words = new ArrayList<>();
        for (DirectionType type : direction.getDirectionType()) {
            for (Object each : type.getWordsOrSymbol()) {
                String value = each instanceof FormattedTextId text ? text.getValue() : null;
                if (value != null && !value.isBlank()) {
                    words.add(value.strip());
                }
            }
        }
        return String.join(" ", words);
    }
}
