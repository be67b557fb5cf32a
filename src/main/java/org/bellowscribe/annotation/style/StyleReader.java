package org.bellowscribe.annotation.style;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.theory.PitchClass;

/** Makes a style of the elements of its file. */
final class StyleReader {

    /** What was seen of one style holds for no other. */
    private static final String PROGRAMS = "programs";

    /** Elements that stand once; all others are lists. */
    private static final Set<String> SINGLE =
            Set.of("buttons", "left-hand", "words", "rows", "spoken", "legend", "practice", "book");

    private StyleReader() {}

    /** Returns an element with everything it does not say taken from its base; lists are taken as a whole. */
    static DefinitionElement onBase(DefinitionElement own, DefinitionElement base) {
        SortedMap<String, String> attributes = new TreeMap<>(base.attributes());
        attributes.remove(PROGRAMS);
        attributes.putAll(own.attributes());
        Set<String> names = new TreeSet<>();
        base.children().forEach(child -> names.add(child.name()));
        own.children().forEach(child -> names.add(child.name()));
        List<DefinitionElement> children = new ArrayList<>();
        for (String name : names) {
            List<DefinitionElement> ours = own.children(name);
            List<DefinitionElement> theirs = base.children(name);
            if (SINGLE.contains(name) && !ours.isEmpty() && !theirs.isEmpty()) {
                children.add(onBase(ours.get(0), theirs.get(0)));
            } else {
                children.addAll(ours.isEmpty() ? theirs : ours);
            }
        }
        return new DefinitionElement(own.name(), attributes, children, own.text(), own.place());
    }

    /** Returns for each element that stands once, and for the root, the attributes that only the whole has. */
    static List<String> missing(DefinitionElement own, DefinitionElement whole) {
        List<String> missing = new ArrayList<>();
        List<String> absent = whole.attributes().keySet().stream()
                .filter(name -> own.attribute(name) == null && !name.equals(PROGRAMS))
                .toList();
        if (!absent.isEmpty()) {
            missing.add("%s: %s".formatted(whole.name(), String.join(", ", absent)));
        }
        for (DefinitionElement part : whole.children()) {
            if (SINGLE.contains(part.name())) {
                DefinitionElement ours = own.child(part.name());
                missing.addAll(ours == null ? List.of(part.name() + ": all") : missing(ours, part));
            }
        }
        return missing;
    }

    /**
     * Returns the style.
     *
     * @param root root element that leaves nothing out
     */
    static Style style(DefinitionElement root) {
        return new Style(
                root.required("id"),
                root.required("language"),
                root.required("name"),
                Objects.requireNonNullElse(root.attribute(PROGRAMS), ""),
                root.required("filler"),
                buttons(part(root, "buttons")),
                leftHand(part(root, "left-hand")),
                words(part(root, "words"), rows(part(root, "rows"))),
                wordings(Phrase.class, part(root, "spoken")),
                wordings(Meaning.class, part(root, "legend")),
                List.of(root.required("lines").split(" ")),
                fonts(root),
                practice(part(root, "practice")),
                wordings(BookText.class, part(root, "book")));
    }

    private static PracticeLabels practice(DefinitionElement practice) {
        return new PracticeLabels(
                template(practice, "tempo"),
                template(practice, "estimated-tempo"),
                practice.required("air-held"),
                template(practice, "air-on"),
                template(practice, "air-lightly-on"),
                template(practice, "also-for"),
                template(practice, "any-start"),
                template(practice, "exercise"),
                practice.required("blocked"),
                practice.required("mixed"),
                practice.required("half"),
                practice.required("quarter"),
                practice.required("last-quarter"),
                practice.required("third"),
                practice.required("last-third"));
    }

    private static ButtonLabels buttons(DefinitionElement buttons) {
        return new ButtonLabels(
                ButtonLines.valueOf(buttons.required("lines").toUpperCase(Locale.ROOT)),
                buttons.required("numbers").equals("fingers"),
                template(buttons, "push"),
                template(buttons, "pull"),
                template(buttons, "held"),
                buttons.children("other-row").stream()
                        .map(row -> template(row, "label"))
                        .toList(),
                buttons.required("between"));
    }

    private static LeftHandLabels leftHand(DefinitionElement leftHand) {
        SortedMap<PitchClass, String> names = new TreeMap<>();
        for (DefinitionElement note : leftHand.children("note")) {
            names.put(PitchClass.parse(note.required("pitch")), note.required("name"));
        }
        String pulledTwin = leftHand.attribute("pulled-twin");
        return new LeftHandLabels(
                leftHand.required("minor"),
                leftHand.required("then"),
                leftHand.required("together"),
                pulledTwin == null ? "" : pulledTwin,
                template(leftHand, "bass"),
                template(leftHand, "chord"),
                leftHand.required("and-so-on"),
                names);
    }

    private static WordLabels words(DefinitionElement words, RowNames rows) {
        return new WordLabels(
                words.required("push"),
                words.required("pull"),
                words.required("air-light"),
                words.required("air-full"),
                words.required("air-before"),
                words.required("air-goes-on"),
                template(words, "direction-with-air"),
                template(words, "hand"),
                template(words, "left-hand"),
                template(words, "sounding"),
                template(words, "opening"),
                words.required("closed"),
                words.required("fully-open"),
                rows,
                words.required("between"),
                words.required("place").equals("above"));
    }

    private static RowNames rows(DefinitionElement rows) {
        return new RowNames(
                rows.required("outer"), rows.required("middle"), rows.required("inner"), template(rows, "other"));
    }

    private static <K extends Enum<K> & Wording> Wordings<K> wordings(Class<K> keys, DefinitionElement element) {
        Map<K, Template> texts = new EnumMap<>(keys);
        for (K key : keys.getEnumConstants()) {
            texts.put(key, template(element, key.id()));
        }
        return new Wordings<>(keys, texts);
    }

    private static Fonts fonts(DefinitionElement root) {
        SortedMap<String, SortedMap<String, String>> fonts = new TreeMap<>();
        DefinitionElement all = root.child("fonts");
        for (DefinitionElement font : all == null ? List.<DefinitionElement>of() : all.children("font")) {
            SortedMap<String, String> attributes = new TreeMap<>();
            font.attributes().forEach((name, value) -> {
                if (!name.equals("of")) {
                    attributes.put(name.equals("color") ? name : "font-" + name, value);
                }
            });
            fonts.put(font.required("of"), attributes);
        }
        return new Fonts(fonts);
    }

    private static Template template(DefinitionElement element, String attribute) {
        return new Template(element.required(attribute));
    }

    private static DefinitionElement part(DefinitionElement root, String name) {
        DefinitionElement part = root.child(name);
        if (part == null) {
            throw new IllegalArgumentException("The style must have the element (%s).".formatted(name));
        }
        return part;
    }
}
