package org.bellowscribe.score;

import java.util.Locale;
import java.util.regex.Pattern;
import org.bellowscribe.score.Jump.Goal;
import org.jspecify.annotations.Nullable;

/**
 * The words by which scores say where to go: "D.C. al Fine", "Dal Segno", "To Coda", "Fine" and their usual spellings.
 */
public final class RoadWords {

    private static final Pattern JUMP =
            Pattern.compile("(da capo|dacapo|d ?c|dal segno|del segno|d ?s|d ?%|d ?\uD834\uDD0B)"
                    + "( (al|alla|a|ad|and|then|to|e|con|with|without|senza|until|till|x|for) .*)?");
    private static final Pattern TO_CODA =
            Pattern.compile("(to|go to|al|alla|to the) (the )?(coda|\uD834\uDD0C|\u2295|\u00d8)( \\d{1,3})?");
    private static final Pattern GOAL_FINE = Pattern.compile("(al|alla|a|until|till) (the )?(fine|fin|ende|end)");
    private static final Pattern GOAL_CODA = Pattern.compile("(al|alla) coda");
    private static final Pattern CODA = Pattern.compile("(coda|\uD834\uDD0C)( \\d{1,3})?");
    private static final Pattern SEGNO = Pattern.compile("segno( \\d{1,3})?|\uD834\uDD0B|%");
    private static final Pattern FINE = Pattern.compile("(\\d+ ?x )?fine( \uD834\uDD10)?|fin|ende|the end");

    private RoadWords() {}

    /** Returns where a jump ends, if the words say that alone, as in "al Fine" or "al Coda"; else null. */
    public static Jump.@Nullable Goal goal(String words) {
        String text = plain(words);
        if (GOAL_FINE.matcher(text).matches()) {
            return Goal.FINE;
        }
        return GOAL_CODA.matcher(text).matches() ? Goal.CODA : null;
    }

    /**
     * Adds what the words say to the signs of their measure; words that say nothing about the order of play change
     * nothing.
     */
    public static RoadSigns read(String words, RoadSigns signs) {
        String text = plain(words);
        if (FINE.matcher(text).matches()) {
            return signs.withFine();
        }
        if (TO_CODA.matcher(text).matches()) {
            return signs.withToCoda(label(text));
        }
        if (CODA.matcher(text).matches()) {
            return signs.withCoda(label(text));
        }
        if (SEGNO.matcher(text).matches()) {
            return signs.withSegno(label(text));
        }
        return JUMP.matcher(text).matches() ? signs.withJump(jump(text)) : signs;
    }

    private static Jump jump(String text) {
        boolean toStart = (text.startsWith("da") && !text.startsWith("dal")) || text.matches("d ?c.*");
        // "al Fine e poi la Coda": what comes first.
        boolean fine = text.matches("(?:(?!coda).)*\\bfine?\\b.*");
        Goal goal = fine ? Goal.FINE : text.contains("coda") ? Goal.CODA : Goal.OPEN;
        boolean withRepeats = text.matches(".*\\b(con|with|avec) (le )?rep.*");
        return new Jump(toStart, "", goal, withRepeats);
    }

    private static String label(String text) {
        return text.matches(".* \\d{1,3}") ? text.substring(text.lastIndexOf(' ') + 1) : "";
    }

    private static String plain(String words) {
        return words.toLowerCase(Locale.ROOT)
                .replaceAll("[().,:;\"'*!\\[\\]-]+", " ")
                .strip()
                .replaceAll("\\s+", " ");
    }
}
