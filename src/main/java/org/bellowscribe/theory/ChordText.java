package org.bellowscribe.theory;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Chord symbols in words, such as {@code Bm}, {@code G7} or {@code (D/F#)}. */
public final class ChordText {

    private static final String NOTE = "([A-G])([#b\u266f\u266d]?)";
    private static final Pattern CHORD = Pattern.compile(NOTE + " ?([^/ ]*|minor|MINOR|major|MAJOR)(?:/" + NOTE + ")?");

    private static final Map<String, List<Integer>> QUALITIES = Map.ofEntries(
            Map.entry("", List.of(0, 4, 7)),
            Map.entry("maj", List.of(0, 4, 7)),
            Map.entry("m", List.of(0, 3, 7)),
            Map.entry("7", List.of(0, 4, 7, 10)),
            Map.entry("maj7", List.of(0, 4, 7, 11)),
            Map.entry("m7", List.of(0, 3, 7, 10)),
            Map.entry("6", List.of(0, 4, 7, 9)),
            Map.entry("m6", List.of(0, 3, 7, 9)),
            Map.entry("9", List.of(0, 2, 4, 7, 10)),
            Map.entry("m9", List.of(0, 2, 3, 7, 10)),
            Map.entry("add9", List.of(0, 2, 4, 7)),
            Map.entry("dim", List.of(0, 3, 6)),
            Map.entry("dim7", List.of(0, 3, 6, 9)),
            Map.entry("m7b5", List.of(0, 3, 6, 10)),
            Map.entry("aug", List.of(0, 4, 8)),
            Map.entry("sus", List.of(0, 5, 7)),
            Map.entry("sus4", List.of(0, 5, 7)),
            Map.entry("sus2", List.of(0, 2, 7)),
            Map.entry("7sus4", List.of(0, 5, 7, 10)),
            Map.entry("5", List.of(0, 7)));

    private ChordText() {}

    /** Returns the chord, or null if the words are no chord symbol. */
    public static @Nullable ChordSymbol parse(String words) {
        Matcher matcher = CHORD.matcher(bare(words));
        if (!matcher.matches()) {
            return null;
        }
        List<Integer> tones = QUALITIES.get(quality(matcher.group(3)));
        if (tones == null) {
            return null;
        }
        PitchClass root = note(matcher.group(1), matcher.group(2));
        PitchClass bass = matcher.group(4) == null ? root : note(matcher.group(4), matcher.group(5));
        Set<PitchClass> classes = new TreeSet<>();
        tones.forEach(tone -> classes.add(root.plus(tone)));
        return new ChordSymbol(root, classes, bass);
    }

    /** Returns true if the words could be nothing but a chord symbol: more than a letter, or a letter in parentheses. */
    public static boolean isUnmistakable(String words) {
        return parse(words) != null && (bare(words).length() > 1 || !bare(words).equals(words.strip()));
    }

    private static String bare(String words) {
        String text = words.strip();
        boolean inside = text.length() > 2
                && ((text.startsWith("(") && text.endsWith(")")) || (text.startsWith("[") && text.endsWith("]")));
        return inside ? text.substring(1, text.length() - 1).strip() : text;
    }

    private static String quality(String text) {
        String plain = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
        return switch (plain) {
            case "min", "mi", "minor", "MINOR", "-" -> "m";
            case "major", "MAJOR", "M" -> "maj";
            case "min7", "mi7", "-7" -> "m7";
            case "M7", "Maj7", "\u25b3", "\u25b37" -> "maj7";
            case "min6", "-6" -> "m6";
            case "\u00b0", "o" -> "dim";
            case "\u00b07", "o7" -> "dim7";
            case "\u00f8", "\u00f87" -> "m7b5";
            case "+" -> "aug";
            default -> plain;
        };
    }

    private static PitchClass note(String letter, String sign) {
        int alter = sign.isEmpty() ? 0 : sign.equals("#") || sign.equals("\u266f") ? 1 : -1;
        return PitchClass.of(PitchClass.semitoneOf(letter.charAt(0)) + alter);
    }
}
