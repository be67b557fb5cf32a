package org.bellowscribe.edition;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.annotation.style.BookText;
import org.bellowscribe.annotation.style.Phrase;
import org.bellowscribe.annotation.style.RowNames;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.syllabus.Thing;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.Mode;
import org.bellowscribe.words.SpokenNotes;

/** Names single things in the language of a style. */
final class NewNames {

    private static final Map<String, BookText> TURNS = Map.of(
            "in a rest", BookText.TURN_REST,
            "on one button", BookText.TURN_HELD,
            "between two buttons of a row", BookText.TURN_ROW,
            "with a change of row", BookText.TURN_OTHER_ROW);

    private static final Map<String, BookText> LENGTHS = Map.of(
            "double whole", BookText.DOUBLE_WHOLE,
            "whole", BookText.WHOLE,
            "half", BookText.HALF,
            "quarter", BookText.QUARTER,
            "eighth", BookText.EIGHTH,
            "16th", BookText.SIXTEENTH,
            "32nd", BookText.THIRTY_SECOND);

    private static final List<Map.Entry<String, BookText>> CHANGED_LENGTHS = List.of(
            Map.entry("dotted ", BookText.DOTTED),
            Map.entry("double-dotted ", BookText.DOUBLE_DOTTED),
            Map.entry("triplet ", BookText.TRIPLET));

    private static final String REST = " rest";
    private static final String PART = " of a quarter";

    private final Style style;
    private final Wordings<BookText> words;
    private final Instrument box;

    NewNames(Style style, Instrument box) {
        this.style = style;
        this.words = style.book();
        this.box = box;
    }

    /** Returns what things of a kind are called. */
    String kind(Thing.Kind kind, int count) {
        return words.say(BookText.valueOf((count == 1 ? "ONE_" : "MANY_") + kind.name()));
    }

    /** Returns the name of a thing beside its kind; of a button without its row. */
    String of(Thing thing) {
        return switch (thing.kind()) {
            case BUTTON -> thing.number() + " " + direction(thing.name());
            case BASS, CHORD -> sound(thing.name());
            case REVERSAL -> words.say(Objects.requireNonNull(TURNS.get(thing.name()), thing.name()));
            case ROW_CHANGE ->
                words.say(BookText.ROW_TO, Map.of("from", row(thing.place()), "to", row(thing.number())));
            case HAND_PLACE -> String.valueOf(thing.number());
            case AIR -> air(thing.name());
            case TIME -> thing.name();
            case KEY -> key(thing);
            case RHYTHM ->
                Arrays.stream(thing.name().split(" \\+ ", -1)).map(this::length).collect(Collectors.joining(" + "));
        };
    }

    private String key(Thing thing) {
        return Arrays.stream(Mode.values())
                .map(mode -> new Key(thing.place(), mode))
                .filter(key -> key.name().equals(thing.name()))
                .map(new SpokenNotes(style.spoken())::key)
                .findFirst()
                .orElse(thing.name());
    }

    /** Returns the name of a row. */
    String row(int row) {
        RowNames rows = style.words().rows();
        String name = rows.name(row, box.rows());
        return name.isEmpty() ? words.say(BookText.DRAWING_ROW, "row", row) : name;
    }

    /** Returns true if rows have to be told apart. */
    boolean hasRows() {
        return box.rows() > 1;
    }

    private String direction(String label) {
        return style.spoken().say(label.equals(BellowsDirection.PUSH.label()) ? Phrase.PUSH : Phrase.PULL);
    }

    private String air(String label) {
        return Arrays.stream(AirUse.values())
                .filter(use -> use.label().equals(label))
                .map(style.words()::air)
                .findFirst()
                .orElse(label);
    }

    private String sound(String name) {
        int space = name.lastIndexOf(' ');
        String label = name.substring(0, space);
        Predicate<LeftHandSound> same = sound -> sound.label().equals(label);
        return box.leftHand().stream()
                        .flatMap(button -> Stream.of(button.push(), button.pull()))
                        .filter(Objects::nonNull)
                        .map(Objects::requireNonNull)
                        .filter(same)
                        .findFirst()
                        .map(style.leftHand()::label)
                        .orElse(label)
                + " " + direction(name.substring(space + 1));
    }

    private String length(String length) {
        if (length.endsWith(REST)) {
            return words.say(BookText.NOTE_REST, "note", length(cut(length, REST)));
        }
        if (length.endsWith(PART)) {
            return words.say(BookText.PART_OF_QUARTER, "part", cut(length, PART));
        }
        for (Map.Entry<String, BookText> changed : CHANGED_LENGTHS) {
            if (length.startsWith(changed.getKey())) {
                return words.say(
                        changed.getValue(),
                        "note",
                        length(length.substring(changed.getKey().length())));
            }
        }
        return words.say(Objects.requireNonNull(LENGTHS.get(length), length));
    }

    private static String cut(String text, String end) {
        return text.substring(0, text.length() - end.length());
    }
}
