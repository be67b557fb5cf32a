package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.audiveris.proxymusic.BackwardForward;
import org.audiveris.proxymusic.BarStyle;
import org.audiveris.proxymusic.Barline;
import org.audiveris.proxymusic.Ending;
import org.audiveris.proxymusic.Repeat;
import org.audiveris.proxymusic.RightLeftMiddle;
import org.audiveris.proxymusic.StartStopDiscontinue;
import org.audiveris.proxymusic.YesNo;
import org.bellowscribe.score.RepeatEnd;
import org.jspecify.annotations.Nullable;

/** Repeats, endings, segno and coda at bar lines. */
final class BarlineReader {

    private static final Pattern RANGE = Pattern.compile("(\\d{1,2})(?:[.\\s]*[-\u2013]\\s*(\\d{1,2}))?");

    private static final Set<BarStyle> DOUBLE =
            EnumSet.of(BarStyle.LIGHT_LIGHT, BarStyle.LIGHT_HEAVY, BarStyle.HEAVY_LIGHT, BarStyle.HEAVY_HEAVY);

    private final RoadMap road;

    BarlineReader(RoadMap road) {
        this.road = road;
    }

    /** Reads a bar line of a measure. */
    void read(Barline barline, int measure) {
        boolean left = barline.getLocation() == RightLeftMiddle.LEFT;
        boolean middle = barline.getLocation() == RightLeftMiddle.MIDDLE;
        if (middle && (barline.getRepeat() != null || barline.getEnding() != null)) {
            road.remark(
                    measure,
                    "The repeat or ending in the middle of measure %d is read as if it stood at the bar line after it.");
        }
        if (barline.getRepeat() != null) {
            repeat(barline.getRepeat(), left, measure);
        }
        if (barline.getEnding() != null) {
            ending(barline.getEnding(), left, measure);
        }
        int next = left ? measure : measure + 1;
        BarStyle style =
                barline.getBarStyle() == null ? null : barline.getBarStyle().getValue();
        if (style != null && DOUBLE.contains(style)) {
            road.doubleBar(next);
        }
        if (barline.getSegnoAttribute() != null || barline.getSegno() != null) {
            road.segno(next, text(barline.getSegnoAttribute()));
        }
        if (barline.getCodaAttribute() != null) {
            road.coda(next, text(barline.getCodaAttribute()), measure);
        } else if (barline.getCoda() != null) {
            road.codaSign(next, measure);
        }
    }

    private void repeat(Repeat repeat, boolean left, int measure) {
        if (repeat.getDirection() == BackwardForward.FORWARD) {
            road.change(left ? measure : measure + 1, old -> old.withRepeatStart());
        } else if (repeat.getDirection() == BackwardForward.BACKWARD) {
            int times = repeat.getTimes() == null || repeat.getTimes().signum() == 0
                    ? 2
                    : repeat.getTimes().intValue();
            RepeatEnd end = new RepeatEnd(times, repeat.getAfterJump() == YesNo.YES);
            road.change(left ? measure - 1 : measure, old -> old.withRepeatEnd(end));
        }
    }

    private void ending(Ending ending, boolean left, int measure) {
        if (ending.getType() == StartStopDiscontinue.START) {
            road.change(
                    left ? measure : measure + 1,
                    old -> old.withEndingStart(numbers(ending.getNumber(), ending.getValue())));
        } else if (ending.getType() != null) {
            road.change(left ? measure - 1 : measure, old -> old.withEndingStop());
        }
    }

    /** Reads "1", "1,2", "1.", "1-3", "1.-3.", "1 2"; the printed text counts where the number says nothing. */
    static List<Integer> numbers(@Nullable String number, @Nullable String text) {
        List<Integer> numbers = numbers(text(number));
        return numbers.isEmpty() ? numbers(text(text)) : numbers;
    }

    private static List<Integer> numbers(String text) {
        List<Integer> numbers = new ArrayList<>();
        Matcher matcher = RANGE.matcher(text);
        while (matcher.find()) {
            int first = Integer.parseInt(matcher.group(1));
            int last = matcher.group(2) == null ? first : Integer.parseInt(matcher.group(2));
            for (int i = first; i <= last; i++) {
                numbers.add(i);
            }
        }
        numbers.removeIf(each -> each == 0);
        return numbers;
    }

    private static String text(@Nullable String value) {
        return value == null ? "" : value.strip();
    }
}
