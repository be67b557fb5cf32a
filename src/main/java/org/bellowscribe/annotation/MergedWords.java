package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.style.WordLabels;

/** Words above the staff, one text for each note: one renderer keeps only the last of several directions at a note. */
final class MergedWords {

    private final WordLabels labels;
    private final SortedMap<Integer, SortedMap<Topic, Set<String>>> texts = new TreeMap<>();

    MergedWords(WordLabels labels) {
        this.labels = labels;
    }

    /**
     * Adds words.
     *
     * @param note place of the note or rest in the file
     */
    void add(int note, Mark.Words words) {
        add(note, words.topic(), Set.of(words.text()));
    }

    /** Adds words about a topic. */
    void add(int note, Topic topic, Set<String> words) {
        texts.computeIfAbsent(note, key -> new TreeMap<>())
                .computeIfAbsent(topic, key -> new LinkedHashSet<>())
                .addAll(words);
    }

    /** Returns the words about a topic at a note; empty if there are none. */
    Set<String> about(Topic topic, int note) {
        SortedMap<Topic, Set<String>> topics = texts.getOrDefault(note, Collections.emptySortedMap());
        return Collections.unmodifiableSet(new LinkedHashSet<>(topics.getOrDefault(topic, Set.of())));
    }

    /** Takes the words about a topic away from a note. */
    void remove(Topic topic, int note) {
        SortedMap<Topic, Set<String>> topics = texts.get(note);
        if (topics != null) {
            topics.remove(topic);
            if (topics.isEmpty()) {
                texts.remove(note);
            }
        }
    }

    /** Returns what the words at a note are about. */
    Set<Topic> topics(int note) {
        return Collections.unmodifiableSet(
                texts.getOrDefault(note, Collections.emptySortedMap()).keySet());
    }

    /** Moves the words about a topic from one note to another, where the same words may stand already with the sign. */
    void move(Topic topic, int from, int to) {
        Set<String> moved = new LinkedHashSet<>(about(topic, from));
        remove(topic, from);
        about(topic, to).forEach(text -> moved.remove(SignedMarks.unsigned(text)));
        if (!moved.isEmpty()) {
            add(to, topic, moved);
        }
    }

    /** Returns the text at a note; empty if there is none. */
    String text(int note) {
        return text(texts.getOrDefault(note, Collections.emptySortedMap()));
    }

    /** Returns the words in the order of the notes. */
    List<Annotation> annotations() {
        List<Annotation> annotations = new ArrayList<>();
        texts.forEach((note, topics) -> annotations.add(new Annotation.Words(note, labels.above(), text(topics))));
        return annotations;
    }

    private String text(SortedMap<Topic, Set<String>> topics) {
        List<String> parts = new ArrayList<>();
        for (Map.Entry<Topic, Set<String>> topic : topics.entrySet()) {
            String part = String.join(labels.between(), topic.getValue());
            if (topic.getKey() == Topic.AIR && topics.containsKey(Topic.DIRECTION)) {
                parts.set(0, labels.directionAndAir(parts.get(0), part));
            } else {
                parts.add(part);
            }
        }
        return String.join(labels.between(), parts);
    }
}
