package org.bellowscribe.page;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.drawing.ButtonUse;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.ConcertinaNumbers;
import org.bellowscribe.instrument.Hand;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.bellowscribe.instrument.LeftHandSound;
import org.jspecify.annotations.Nullable;

/**
 * The buttons of both hands as tables, as the player has them: the chin at the top, each hand on its side, what lies away
 * from the bellows at the edges. Each button says what it sounds and how often it is struck in one playing.
 */
final class KeySection {

    private final Instrument instrument;
    private final ButtonUse count;
    private final ConcertinaNumbers concertina;

    KeySection(Instrument instrument, ButtonUse count) {
        this.instrument = instrument;
        this.count = count;
        concertina = new ConcertinaNumbers(instrument);
    }

    /** A button as it is shown. */
    private record Key(
            String id,
            int number,
            @Nullable Object push,
            @Nullable Object pull,
            Map<String, ButtonUse.Times> times) {}

    /** Returns the section's content. */
    String html() {
        StringBuilder html = new StringBuilder("<div id=\"keys\">\n");
        String left = hand(Hand.LEFT);
        String right = hand(Hand.RIGHT);
        html.append(left).append(right).append("</div>\n");
        return html.toString();
    }

    private String hand(Hand hand) {
        SortedMap<Integer, SortedMap<Integer, Key>> rows = new TreeMap<>();
        for (Button button : instrument.buttons()) {
            if (button.hand() == hand) {
                int number = instrument.grip().strapped() ? concertina.of(button) : button.number();
                put(
                        rows,
                        button.row(),
                        new Key("r" + button.id(), number, button.push(), button.pull(), count.melody()));
            }
        }
        SortedMap<Integer, SortedMap<Integer, Key>> columns = new TreeMap<>();
        if (hand == bassHand()) {
            for (LeftHandButton button : instrument.leftHand()) {
                put(
                        columns,
                        button.column(),
                        new Key("l" + button.id(), button.number(), button.push(), button.pull(), count.leftHand()));
            }
        }
        if (rows.isEmpty() && columns.isEmpty()) {
            return "";
        }
        StringBuilder tables =
                new StringBuilder("<section><h3>%s</h3><div>\n".formatted(Html.capital(hand.label()) + " hand"));
        lines(hand, columns).forEach((line, keys) -> tables.append(table(bassLine(line, columns.size()), keys)));
        lines(hand, rows).forEach((line, keys) -> tables.append(table(rowName(line), keys)));
        return tables.append("</div></section>\n").toString();
    }

    private Hand bassHand() {
        boolean mirrored = !instrument.grip().strapped()
                && instrument.buttons().stream().anyMatch(button -> button.hand() == Hand.LEFT);
        return mirrored ? Hand.RIGHT : Hand.LEFT;
    }

    private static void put(SortedMap<Integer, SortedMap<Integer, Key>> lines, int line, Key key) {
        lines.computeIfAbsent(line, each -> new TreeMap<>()).put(key.number(), key);
    }

    // What lies away from the bellows stands at the edge: first on the left side, last on the right.
    private static Map<Integer, SortedMap<Integer, Key>> lines(
            Hand hand, SortedMap<Integer, SortedMap<Integer, Key>> all) {
        if (hand == Hand.LEFT) {
            return all;
        }
        SortedMap<Integer, SortedMap<Integer, Key>> turned = new TreeMap<>((a, b) -> Integer.compare(b, a));
        turned.putAll(all);
        return turned;
    }

    private static String bassLine(int column, int columns) {
        return columns == 1 ? "column" : columns == 2 ? (column == 1 ? "outer" : "inner") : "column " + column;
    }

    private String rowName(int row) {
        int rows = instrument.rows();
        if (instrument.grip().strapped() || rows > 3) {
            return "row " + row;
        }
        return rows == 1 ? "row" : row == 1 ? "outer row" : row == rows ? "inner row" : "middle row";
    }

    private static String table(String name, SortedMap<Integer, Key> keys) {
        StringBuilder table = new StringBuilder("<table class=\"keys\"><caption>%s</caption>".formatted(name));
        table.append(
                "<thead><tr><td></td><th scope=\"col\">push</th><th scope=\"col\">pull</th></tr></thead><tbody>\n");
        for (Key key : keys.values()) {
            ButtonUse.Times times = key.times().getOrDefault(key.id().substring(1), ButtonUse.Times.NONE);
            table.append("<tr%s data-key=\"%s\"><th scope=\"row\">%d</th>"
                    .formatted(times.sum() == 0 ? " class=\"idle\"" : "", key.id(), key.number()));
            table.append(half(BellowsDirection.PUSH, key.push(), times.push()));
            table.append(half(BellowsDirection.PULL, key.pull(), times.pull())).append("</tr>\n");
        }
        return table.append("</tbody></table>\n").toString();
    }

    private static String half(BellowsDirection direction, @Nullable Object sound, int times) {
        String name = sound instanceof LeftHandSound leftHand ? leftHand.label() : Objects.toString(sound, "");
        String use = times == 0 ? "" : " <small>%d×</small>".formatted(times);
        return "<td class=\"%s%s\">%s%s</td>"
                .formatted(direction.label(), times == 0 ? "" : " used", Html.text(name), use);
    }

    /** Returns which buttons are used in words. */
    String summary() {
        List<Integer> used = List.of(count.melody().size(), instrument.buttons().size());
        String melody = "%d of %d melody buttons are used".formatted(used.get(0), used.get(1));
        return instrument.leftHand().isEmpty()
                ? melody + "."
                : "%s, and %d of %d basses and chords."
                        .formatted(
                                melody,
                                count.leftHand().size(),
                                instrument.leftHand().size());
    }
}
