package org.bellowscribe.instrument.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.instrument.Instrument;

/** Writes an instrument file: one of the library by reference or one of a user, with some figures of its air changed. */
public final class InstrumentCopy {

    /** The elements with figures, which stand last in a file. */
    private static final List<String> AIR = List.of("bellows", "air-button", "reeds");

    private final DefinitionElement root;
    private final Map<String, Map<String, DefinitionElement>> air = new TreeMap<>();

    private InstrumentCopy(DefinitionElement root) {
        this.root = root;
        for (String name : AIR) {
            Map<String, DefinitionElement> figures = new TreeMap<>();
            DefinitionElement part = root.child(name);
            if (part != null) {
                part.children().forEach(figure -> figures.put(figure.name(), figure));
            }
            air.put(name, figures);
        }
    }

    /** Begins an instrument that is one of the library but for what is changed. */
    static InstrumentCopy basedOn(Instrument base) {
        SortedMap<String, String> attributes = new TreeMap<>();
        attributes.put("id", "my-" + base.id());
        attributes.put("name", base.name() + ", timed");
        attributes.put("base", base.id());
        return new InstrumentCopy(new DefinitionElement("instrument", attributes, List.of(), "", Place.FILE));
    }

    /** Begins a copy of a user's instrument. */
    static InstrumentCopy of(DefinitionElement root) {
        return new InstrumentCopy(root);
    }

    /**
     * Changes a figure.
     *
     * @param element {@code bellows}, {@code air-button} or {@code reeds}
     * @param name the element in it, such as {@code capacity}
     * @param value its value as it is to stand there
     * @param source where the value comes from
     */
    public InstrumentCopy with(String element, String name, String value, String source) {
        SortedMap<String, String> attributes = new TreeMap<>(Map.of("source", source));
        Map<String, DefinitionElement> figures = air.get(element);
        if (figures == null) {
            throw new IllegalArgumentException("The element (%s) must be one of %s.".formatted(element, AIR));
        }
        figures.put(name, new DefinitionElement(name, attributes, List.of(), value, Place.FILE));
        return this;
    }

    /** Returns the text of the file. Comments of the file that was copied are not in it. */
    public String text() {
        List<DefinitionElement> children = new ArrayList<>(root.children());
        children.removeIf(child -> AIR.contains(child.name()));
        for (String name : AIR) {
            List<DefinitionElement> figures =
                    List.copyOf(air.getOrDefault(name, Map.of()).values());
            if (!figures.isEmpty()) {
                children.add(new DefinitionElement(name, new TreeMap<>(), figures, "", Place.FILE));
            }
        }
        StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        write(new DefinitionElement(root.name(), root.attributes(), children, "", Place.FILE), "", text);
        return text.toString();
    }

    private static void write(DefinitionElement element, String indent, StringBuilder text) {
        text.append(indent).append('<').append(element.name());
        element.attributes()
                .forEach((name, value) -> text.append(' ')
                        .append(name)
                        .append("=\"")
                        .append(escape(value))
                        .append('"'));
        if (element.children().isEmpty() && element.text().isEmpty()) {
            text.append("/>\n");
            return;
        }
        text.append('>');
        if (element.children().isEmpty()) {
            text.append(escape(element.text()));
        } else {
            text.append('\n');
            element.children().forEach(child -> write(child, indent + "  ", text));
            text.append(indent);
        }
        text.append("</").append(element.name()).append(">\n");
    }

    private static String escape(String value) {
        return value.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("\n", "&#10;");
    }
}
