package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.diagnostic.DiagnosedException;

/**
 * Puts our elements into a text that has none, each directly behind a {@code >} and with white space of its own, so that
 * {@link MarkRemover} gives the text back.
 */
final class MarkWriter {

    private final String text;
    private final NoteAnchors anchors;
    private final PartContext context;
    private final MarkIds ids;
    private final MarkElements elements;
    private final GraceStarts graces = new GraceStarts();
    // By place in the text, in the order in which they stand there.
    private final SortedMap<Integer, StringBuilder> insertions = new TreeMap<>();

    private MarkWriter(String text, NoteAnchors anchors, PartContext context, MarkIds ids, MarkElements elements) {
        this.text = text;
        this.anchors = anchors;
        this.context = context;
        this.ids = ids;
        this.elements = elements;
    }

    /**
     * Returns the text with marks.
     *
     * @param text text without marks of ours
     * @param elements how marks become elements
     * @param annotations marks in any order
     * @throws IllegalArgumentException if a mark belongs to no note or two claim one place
     */
    static String write(String text, MarkElements elements, List<Annotation> annotations) throws DiagnosedException {
        List<GraceWalk.Note> all = GraceWalk.in(text);
        SortedMap<Integer, NoteMarks> notes =
                NoteMarks.group(WordsBeforeGrace.below(all, annotations, elements.filler()));
        SortedMap<Integer, List<Annotation.Syllable>> fillers = GraceNotes.fillers(all, notes);
        SortedSet<Integer> places = new TreeSet<>(notes.keySet());
        places.addAll(fillers.keySet());
        NoteAnchors anchors = new NoteAnchors(places);
        PartContext context = new PartContext(notes.keySet());
        MarkIds ids = new MarkIds();
        List<XmlVisitor> visitors = new ArrayList<>(List.of(anchors));
        if (text.contains(MarkNames.PREFIX)) {
            visitors.add(ids);
        }
        if (notes.values().stream().anyMatch(marks -> !marks.symbols().isEmpty())) {
            visitors.add(context);
        }
        MarkWriter writer = new MarkWriter(text, anchors, context, ids, elements);
        visitors.add(writer.graces);
        XmlWalk.over(text, visitors.toArray(XmlVisitor[]::new));
        for (int place : places) {
            NoteMarks marks = notes.get(place);
            if (marks != null) {
                writer.note(place, marks);
            } else {
                writer.grace(place, fillers.getOrDefault(place, List.of()));
            }
        }
        return writer.marked();
    }

    private String marked() {
        StringBuilder marked = new StringBuilder(text.length() * 2);
        int done = 0;
        for (Map.Entry<Integer, StringBuilder> insertion : insertions.entrySet()) {
            marked.append(text, done, insertion.getKey()).append(insertion.getValue());
            done = insertion.getKey();
        }
        return marked.append(text, done, text.length()).toString();
    }

    private void note(int index, NoteMarks marks) {
        NoteAnchor note = anchors.of(index);
        Anchor words = graces.before(index, note.words());
        marks.symbols().forEach(h -> insert(words, MarkElements.harmony(h, ids.nextSymbol(), note, context.of(index))));
        marks.words().forEach(w -> insert(words, elements.direction(w, ids.nextWords(), note)));
        marks.lines().forEach(l -> insert(words, elements.line(l, ids.nextLine(), note)));
        if (marks.bracketBegins()) {
            insert(words, MarkElements.bracket("start", ids.nextBracket(), note));
        }
        if (note.isOneTag()
                && !(marks.fingers().isEmpty()
                        && marks.signs().isEmpty()
                        && marks.syllables().isEmpty())) {
            throw new IllegalArgumentException("The note (" + index + ") is empty and cannot be marked.");
        }
        marks.fingers().forEach(f -> technical(note, elements.finger(f), ids.nextFinger()));
        marks.signs().forEach(s -> technical(note, MarkElements.sign(s), ids.nextSign()));
        marks.syllables().forEach(s -> insert(note.lyric(), elements.lyric(s)));
        if (marks.bracketEnds()) {
            insert(note.behind(), MarkElements.bracket("stop", ids.nextBracket(), note));
        }
    }

    private void grace(int index, List<Annotation.Syllable> lines) {
        NoteAnchor note = anchors.of(index);
        if (!note.isOneTag()) {
            lines.forEach(line -> insert(note.lyric(), elements.filler(line)));
        }
    }

    private void technical(NoteAnchor note, String content, String id) {
        Anchor inside = note.inNotations();
        if (inside == null) {
            insert(note.notations(), MarkElements.notations(content, id));
        } else {
            insert(inside, MarkElements.technical(content, id));
        }
    }

    private void insert(Anchor anchor, String element) {
        insertions
                .computeIfAbsent(anchor.offset(), place -> new StringBuilder())
                .append(anchor.space())
                .append(element);
    }
}
