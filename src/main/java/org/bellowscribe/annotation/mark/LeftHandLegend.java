package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.LegendEntry;
import org.bellowscribe.annotation.Mark;
import org.bellowscribe.annotation.style.LeftHandLabels;
import org.bellowscribe.annotation.style.Meaning;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.solver.LeftHandPlay;

/** What the letters of the left hand mean. */
final class LeftHandLegend {

    private final LeftHandLabels labels;
    private final Wordings<Meaning> meanings;
    private final List<LegendEntry> entries = new ArrayList<>();

    private LeftHandLegend(Style style) {
        labels = style.leftHand();
        meanings = style.legend();
    }

    /**
     * Returns an entry for each sort of sound and of text that occurs, with the first example in the order of the notes.
     *
     * @param marks the marks of the left hand
     */
    static List<LegendEntry> of(Arrangement arrangement, List<Mark> marks) {
        LeftHandLegend legend = new LeftHandLegend(arrangement.style());
        List<LeftHandSound> sounds = arrangement.solution().steps().stream()
                .flatMap(step -> step.leftHand().stream())
                .map(LeftHandPlay::sound)
                .filter(Objects::nonNull)
                .sorted()
                .toList();
        legend.addSound(sounds, sound -> sound.kind() == LeftHandKind.BASS, Meaning.BASS);
        legend.addSound(
                sounds, sound -> sound.kind() == LeftHandKind.CHORD && sound.third() != Third.MINOR, Meaning.CHORD);
        legend.addSound(sounds, sound -> sound.third() == Third.MINOR, Meaning.CHORD_MINOR);
        legend.addTexts(marks);
        return legend.entries;
    }

    private void addSound(List<LeftHandSound> sounds, Predicate<LeftHandSound> sort, Meaning meaning) {
        sounds.stream()
                .filter(sort)
                .limit(1)
                .forEach(sound -> entries.add(new LegendEntry(
                        labels.label(sound), meanings.say(meaning, "note", labels.name(sound.root())))));
    }

    private void addTexts(List<Mark> marks) {
        List<String> texts = marks.stream()
                .filter(Mark.Syllable.class::isInstance)
                .map(mark -> ((Mark.Syllable) mark).text())
                .toList();
        addText(texts, text -> text.indexOf(labels.then()) > 0, Meaning.THEN);
        addText(texts, text -> text.startsWith(labels.then()), Meaning.LATER);
        addText(texts, text -> text.contains(labels.together()), Meaning.TOGETHER);
    }

    private void addText(List<String> texts, Predicate<String> sort, Meaning meaning) {
        texts.stream().filter(sort).limit(1).forEach(text -> entries.add(new LegendEntry(text, meanings.say(meaning))));
    }
}
