package org.bellowscribe.annotation;

import java.util.Collections;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which marks bear the sign that fixes them, so that a later run keeps them too.
 *
 * @param aspects by 0-based index of the event, what is fixed there
 */
public record SignedMarks(SortedMap<Integer, SortedSet<MarkAspect>> aspects) {

    /** The sign, behind the text of a mark. Our own; no notation of the trade that we know of ends a label in it. */
    public static final String SIGN = "!";

    /** No mark is fixed. */
    public static final SignedMarks NONE = new SignedMarks(new TreeMap<>());

    /** Copies the map. */
    public SignedMarks {
        SortedMap<Integer, SortedSet<MarkAspect>> copy = new TreeMap<>();
        aspects.forEach((event, set) -> copy.put(event, Collections.unmodifiableSortedSet(new TreeSet<>(set))));
        aspects = Collections.unmodifiableSortedMap(copy);
    }

    /** Returns these and one more. */
    public SignedMarks plus(int event, MarkAspect aspect) {
        SortedMap<Integer, SortedSet<MarkAspect>> more = new TreeMap<>(aspects);
        SortedSet<MarkAspect> set = new TreeSet<>(more.getOrDefault(event, Collections.emptySortedSet()));
        set.add(aspect);
        more.put(event, set);
        return new SignedMarks(more);
    }

    /** Returns true if an aspect of an event is fixed. */
    public boolean has(int event, MarkAspect aspect) {
        SortedSet<MarkAspect> set = aspects.get(event);
        return set != null && set.contains(aspect);
    }

    /** Returns true if a text ends in the sign. */
    public static boolean isSigned(String text) {
        return text.strip().endsWith(SIGN);
    }

    /** Returns a text without the sign and without white space around it. */
    public static String unsigned(String text) {
        String rest = text.strip();
        while (rest.endsWith(SIGN)) {
            rest = rest.substring(0, rest.length() - SIGN.length()).strip();
        }
        return rest;
    }
}
