package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bellowscribe.annotation.LetteredPart;
import org.bellowscribe.annotation.PartLook;
import org.bellowscribe.theory.PitchClass;

/** Finds parts that have the names of our left hand and a text below all that they strike. */
final class LetteredParts implements XmlVisitor {

    private record Struck(SortedSet<PitchClass> notes, List<String> texts) {}

    private final Map<String, List<Struck>> parts = new LinkedHashMap<>();
    private String name = "";
    private String abbreviation = "";
    private boolean chord;
    private boolean pitched;
    private int semitone;
    private List<String> texts = new ArrayList<>();

    /** Returns the parts in the order of the score. */
    List<LetteredPart> found() {
        List<LetteredPart> found = new ArrayList<>();
        parts.forEach((id, struck) -> {
            if (!struck.isEmpty()
                    && struck.stream().allMatch(each -> each.texts().size() == 1)) {
                found.add(new LetteredPart(
                        id,
                        struck.stream()
                                .map(each -> new LetteredPart.Group(
                                        each.notes(), each.texts().get(0)))
                                .toList()));
            }
        });
        return found;
    }

    @Override
    public void start(XmlElement element) {
        if (element.is("score-part")) {
            name = "";
            abbreviation = "";
        } else if (element.is("note")) {
            chord = false;
            pitched = false;
            semitone = 0;
            texts = new ArrayList<>();
        }
    }

    @Override
    public void end(XmlElement element) {
        switch (element.name()) {
            case "part-name" -> name = element.plainContent();
            case "part-abbreviation" -> abbreviation = element.plainContent();
            case "score-part" -> {
                String id = element.attribute("id");
                if (id != null
                        && name.equals(PartLook.LEFT_HAND.title())
                        && abbreviation.equals(PartLook.LEFT_HAND.abbreviation())) {
                    parts.put(id, new ArrayList<>());
                }
            }
            case "chord" -> chord = true;
            case "step" -> step(element.plainContent());
            case "alter" ->
                semitone += element.plainContent().matches("-?[0-9]") ? Integer.parseInt(element.plainContent()) : 0;
            case "text" -> texts.add(XmlText.unescape(element.plainContent()));
            case "note" -> note(element);
            default -> {}
        }
    }

    private void step(String letter) {
        if (letter.matches("[A-G]")) {
            pitched = true;
            semitone += PitchClass.semitoneOf(letter.charAt(0));
        }
    }

    private void note(XmlElement note) {
        List<Struck> struck = pitched && NoteAnchors.isNote(note) ? parts.get(id(note)) : null;
        if (struck == null) {
            return;
        }
        if (!chord || struck.isEmpty()) {
            struck.add(new Struck(new TreeSet<>(), texts));
        }
        struck.get(struck.size() - 1).notes().add(PitchClass.of(semitone));
    }

    // Of the part around the measure, or of that in it in a timewise score.
    private static String id(XmlElement note) {
        XmlElement around = note.parent();
        while (around != null && !around.is("part")) {
            around = around.parent();
        }
        String id = around == null ? null : around.attribute("id");
        return id == null ? "" : id;
    }
}
