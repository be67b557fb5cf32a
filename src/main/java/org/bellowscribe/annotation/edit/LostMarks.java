package org.bellowscribe.annotation.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.MarkAspect;
import org.bellowscribe.annotation.MarkLines;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.solver.Task;

/**
 * Knows marks of ours again whose names a notation program has dropped: a lyric line that names, under nearly all of its
 * notes, buttons that give just these notes on the instrument is no song text. Only where there is such a line, the lines
 * of left-hand letters, that of their fingers and the words that can be read whole are ours as well.
 */
public final class LostMarks {

    /** So many texts a line of buttons must have to be known again. */
    private static final int FEWEST = 4;

    /** Of so many texts three must be read. */
    private static final int OUT_OF = 4;

    private final Task task;
    private final Style style;
    private final List<Annotation> texts;

    private LostMarks(Task task, Style style, List<Annotation> texts) {
        this.task = task;
        this.style = style;
        this.texts = texts;
    }

    /** Returns true if there may be marks among texts: enough of the lyrics have digits. */
    public static boolean mayBeAmong(List<Annotation> texts) {
        return texts.stream()
                        .filter(text -> text instanceof Annotation.Syllable syllable
                                && syllable.text().matches(".*\\d.*"))
                        .count()
                >= FEWEST;
    }

    /**
     * Returns the texts that are marks of ours, each with the name of its line; empty if there are none.
     *
     * @param task the tune with the instrument for which it was marked
     * @param style the style in which it was marked
     * @param texts lyrics and words without names
     */
    public static Map<Annotation, String> among(Task task, Style style, List<Annotation> texts) {
        return new LostMarks(task, style, texts).find();
    }

    private Map<Annotation, String> find() {
        SortedMap<Integer, List<Annotation.Syllable>> lines = new TreeMap<>();
        List<Annotation> words = new ArrayList<>();
        for (Annotation text : texts) {
            if (text instanceof Annotation.Syllable syllable) {
                lines.computeIfAbsent(syllable.line(), line -> new ArrayList<>())
                        .add(syllable);
            } else {
                words.add(text);
            }
        }
        Map<Annotation, String> names = new LinkedHashMap<>();
        nameButtons(lines, names);
        if (names.isEmpty()) {
            return names;
        }
        name(lines, MarkLines.LEFT_HAND, 1, names);
        nameFingers(lines, names);
        nameWords(lines, names);
        for (Annotation mark : words) {
            if (isWhole(mark)) {
                names.put(mark, MarkLines.BUTTONS);
            }
        }
        return names;
    }

    // Beside a line that was read, one for the other way of the bellows or another row may be short.
    private void nameButtons(SortedMap<Integer, List<Annotation.Syllable>> lines, Map<Annotation, String> names) {
        for (String name : buttonLines()) {
            name(lines, name, FEWEST, names);
        }
        for (String name : names.isEmpty() ? List.<String>of() : buttonLines()) {
            if (!names.containsValue(name)) {
                name(lines, name, 1, names);
            }
        }
    }

    private List<String> buttonLines() {
        return switch (style.buttons().lines()) {
            case ONE -> List.of(MarkLines.BUTTONS);
            case TWO -> List.of(BellowsDirection.PUSH.label(), BellowsDirection.PULL.label());
            case ROWS -> rowLines();
        };
    }

    private List<String> rowLines() {
        List<String> names = new ArrayList<>();
        int rows = task.instrument().grip().strapped() ? 0 : task.instrument().rows();
        for (int row = 1; row <= rows; row++) {
            names.add(MarkLines.ofRow(row));
        }
        return names.isEmpty() ? List.of(MarkLines.BUTTONS) : names;
    }

    // Gives the first line that can be read under a name that name.
    private void name(
            SortedMap<Integer, List<Annotation.Syllable>> lines,
            String name,
            int fewest,
            Map<Annotation, String> names) {
        for (List<Annotation.Syllable> line : lines.values()) {
            boolean free = line.stream().noneMatch(names::containsKey);
            if (free && isRead(line, name, fewest, otherRows(line, names))) {
                line.forEach(syllable -> names.put(syllable, name));
                return;
            }
        }
    }

    // A line with as many digits at every note as there are letters of the left hand.
    private void nameFingers(SortedMap<Integer, List<Annotation.Syllable>> lines, Map<Annotation, String> names) {
        Map<Integer, String> letters = new HashMap<>();
        names.forEach((mark, name) -> {
            if (name.equals(MarkLines.LEFT_HAND)) {
                letters.put(mark.noteIndex(), ((Annotation.Syllable) mark).text());
            }
        });
        FingerLine digits = new FingerLine(style.leftHand());
        for (List<Annotation.Syllable> line : lines.values()) {
            boolean ours = line.stream()
                    .noneMatch(each -> names.containsKey(each)
                            || (!each.text().equals(style.filler())
                                    && !digits.belongTo(each.text(), letters.getOrDefault(each.noteIndex(), ""))));
            if (ours) {
                line.forEach(syllable -> names.put(syllable, MarkLines.LEFT_HAND_FINGERS));
                return;
            }
        }
    }

    // A line of words below their notes.
    private void nameWords(SortedMap<Integer, List<Annotation.Syllable>> lines, Map<Annotation, String> names) {
        for (List<Annotation.Syllable> line : lines.values()) {
            boolean ours = line.stream()
                    .noneMatch(each -> names.containsKey(each)
                            || !isWhole(new Annotation.Words(each.noteIndex(), false, each.text())));
            if (ours) {
                line.forEach(syllable -> names.put(syllable, MarkLines.WORDS));
                return;
            }
        }
    }

    // Buttons of other rows that are pressed together with those of a line for one row.
    private static List<Annotation> otherRows(List<Annotation.Syllable> line, Map<Annotation, String> names) {
        List<Annotation> others = new ArrayList<>();
        names.forEach((mark, name) -> {
            if (mark instanceof Annotation.Syllable row
                    && MarkLines.row(name) > 0
                    && line.stream().anyMatch(each -> each.noteIndex() == mark.noteIndex())) {
                others.add(new Annotation.Syllable(row.noteIndex(), 0, name, row.text()));
            }
        });
        return others;
    }

    private boolean isRead(List<Annotation.Syllable> line, String name, int fewest, List<Annotation> others) {
        List<Annotation> named = new ArrayList<>();
        for (Annotation.Syllable syllable : line) {
            if (!SignedMarks.unsigned(syllable.text()).equals(style.filler())) {
                named.add(new Annotation.Syllable(syllable.noteIndex(), 0, name, syllable.text()));
            }
        }
        int count = named.size();
        Set<Integer> notes = new HashSet<>();
        named.forEach(mark -> notes.add(mark.noteIndex()));
        others.stream().filter(mark -> notes.contains(mark.noteIndex())).forEach(named::add);
        int told = new MarkReading(task, style, texts).mainRow();
        int first = told == 0 ? 1 : told;
        int last = told == 0 ? task.instrument().rows() : told;
        for (int row = first; row <= last; row++) {
            long read = new MarkReading(task, style, named)
                    .read(row).stream()
                            .filter(ReadMark::isRead)
                            .filter(mark -> mark.aspect() == MarkLines.aspect(name))
                            .count();
            if (count >= fewest && OUT_OF * read >= (OUT_OF - 1) * (long) count) {
                return true;
            }
        }
        return false;
    }

    private boolean isWhole(Annotation mark) {
        MarkReading reading = new MarkReading(task, style, List.of(mark), texts);
        List<ReadMark> read = reading.read(1);
        boolean row = reading.mainRow() != 0
                && task.instrument().rows() > 1
                && !task.instrument().grip().strapped();
        return read.stream().allMatch(ReadMark::isRead)
                && (row || reading.isOpening() || read.stream().anyMatch(each -> each.aspect() != MarkAspect.BUTTONS));
    }
}
