package org.bellowscribe.annotation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.style.WordLabels;

/** Words above the staff, one text for each note: one renderer keeps only the last of several directions at a note. */
final class MergedWords {

    private final SortedMap<Integer, SortedMap<Topic, Set<String>>> texts = new TreeMap<>();

    /**
     * Adds words.
     *
     * @param note place of the note or rest in the file
     */
    void add(int note, Mark.Words words) {
        texts.computeIfAbsent(note, key -> new TreeMap<>())
                .computeIfAbsent(words.topic(), key -> new LinkedHashSet<>())
                .add(words.text());
    }

    /** Returns the words in the order of the notes. */
    List<Annotation> annotations(WordLabels labels) {
        List<Annotation> annotations = new ArrayList<>();
        texts.forEach((note, topics) -> annotations.add(new Annotation.Words(note, true, text(topics, labels))));
        return annotations;
    }

    private static String text(SortedMap<Topic, Set<String>> topics, WordLabels labels) {
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
