package org.bellowscribe.annotation;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bellowscribe.score.Event;

/**
 * Spreads the words of the start over the first notes. All that a player must know there in one line runs into the tempo
 * and the next words; so what does not fit above the first note goes to one where there is room for it, while it is still
 * true.
 */
final class StartWords {

    /** Notes behind the first at which words of the start may stand. */
    private static final int NEAR = 12;

    /** Room that a character takes; a quaver takes 1.5, a quarter 2 (measured in three programs). */
    private static final double CHARACTER = 0.43;

    // What may wait; what is wanted soonest comes first.
    private static final List<Topic> MOVABLE = List.of(Topic.HAND, Topic.ROW, Topic.KEY, Topic.ALSO_FOR);

    /**
     * Where words of the start go.
     *
     * @param from place of the first note in the file
     * @param to place of the note at which they stand
     */
    record Move(int from, int to) {}

    private final SortedMap<Topic, Move> moves = new TreeMap<>();
    private final MergedWords words;
    private final List<Event> written;
    private final int start;

    private StartWords(MergedWords words, List<Event> written, int start) {
        this.words = words;
        this.written = written;
        this.start = start;
    }

    /**
     * Spreads the words at the first note.
     *
     * @param events the events of the tune in score order
     * @return what went to another note
     */
    static SortedMap<Topic, Move> spread(MergedWords words, List<Event> events) {
        List<Event> written = events.stream().filter(event -> !event.isGap()).toList();
        for (int i = 0; i < written.size(); i++) {
            if (!written.get(i).isRest()) {
                StartWords start = new StartWords(words, written, i);
                start.spread();
                return start.moves;
            }
        }
        return new TreeMap<>();
    }

    private void spread() {
        Map<Topic, Set<String>> waiting = take();
        putWhatFits(start, waiting);
        int from = start;
        while (!waiting.isEmpty()) {
            int to = place(from, waiting);
            if (to < 0) {
                // The hand moves at once; the others may find a place without it.
                Map.Entry<Topic, Set<String>> stays =
                        waiting.entrySet().iterator().next();
                words.add(note(start), stays.getKey(), stays.getValue());
                waiting.remove(stays.getKey());
                continue;
            }
            from = to;
            if (isFixedAt(from, waiting)) {
                waiting.remove(Topic.HAND);
                moves.put(Topic.HAND, new Move(note(start), note(from)));
            }
            putWhatFits(from, waiting);
        }
    }

    private Map<Topic, Set<String>> take() {
        Map<Topic, Set<String>> waiting = new LinkedHashMap<>();
        for (Topic topic : MOVABLE) {
            Set<String> texts = words.about(topic, note(start));
            if (!texts.isEmpty() && texts.stream().noneMatch(SignedMarks::isSigned)) {
                waiting.put(topic, texts);
                words.remove(topic, note(start));
            }
        }
        return waiting;
    }

    private void putWhatFits(int at, Map<Topic, Set<String>> waiting) {
        for (Topic topic : MOVABLE) {
            Set<String> texts = waiting.get(topic);
            if (texts != null) {
                boolean first = words.text(note(at)).isEmpty();
                words.add(note(at), topic, texts);
                int length = words.text(note(at)).length();
                boolean fits = at != start || CHARACTER * length <= roomBehind(at);
                if (first || (length <= Mark.Words.LONGEST && fits)) {
                    waiting.remove(topic);
                    putMove(topic, at);
                } else {
                    words.remove(topic, note(at));
                }
            }
        }
    }

    private void putMove(Topic topic, int at) {
        if (at != start) {
            moves.put(topic, new Move(note(start), note(at)));
        }
    }

    /** Returns the nearest place with room before and behind, or the roomiest if none has enough; -1 if there is none. */
    private int place(int from, Map<Topic, Set<String>> waiting) {
        int length = waiting.values().stream()
                .map(texts -> String.join("  ", texts))
                .collect(Collectors.joining("  "))
                .length();
        double own = CHARACTER * Math.min(Mark.Words.LONGEST, length);
        int best = -1;
        double mostRoom = Double.NEGATIVE_INFINITY;
        for (int at = from + 1; at < Math.min(written.size(), start + NEAR); at++) {
            if (isFixedAt(at, waiting)) {
                return at;
            }
            if (waiting.containsKey(Topic.HAND)
                    && !words.about(Topic.HAND, note(at)).isEmpty()) {
                break;
            }
            double room = Math.min(roomBefore(at), roomBehind(at) - own);
            if (words.text(note(at)).isEmpty() && room > mostRoom) {
                best = at;
                mostRoom = room;
            }
            if (mostRoom >= 0) {
                break;
            }
        }
        return best;
    }

    // Where a hand has fixed the very place that the start would tell, it is told there.
    private boolean isFixedAt(int at, Map<Topic, Set<String>> waiting) {
        Set<String> places = waiting.getOrDefault(Topic.HAND, Set.of());
        return words.about(Topic.HAND, note(at)).stream()
                .anyMatch(text -> SignedMarks.isSigned(text) && places.contains(SignedMarks.unsigned(text)));
    }

    private double roomBefore(int at) {
        double way = 0;
        double room = Double.POSITIVE_INFINITY;
        for (int i = at - 1; i >= 0; i--) {
            way += width(i);
            room = Math.min(room, way - CHARACTER * words.text(note(i)).length());
        }
        return room;
    }

    private double roomBehind(int at) {
        double room = 0;
        for (int i = at; i < written.size(); i++) {
            if (i > at && !words.text(note(i)).isEmpty()) {
                return room;
            }
            room += width(i);
        }
        return Double.POSITIVE_INFINITY;
    }

    private double width(int at) {
        return 1 + written.get(at).duration().toDouble();
    }

    private int note(int at) {
        return written.get(at).firstNoteIndex();
    }
}
