package org.bellowscribe.definition;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** The values of attributes that a file leaves out, as a schema says them for an element within another. */
final class AttributeDefaults {

    /** Those of a schema that fills nothing in. */
    static final AttributeDefaults NONE =
            new AttributeDefaults(new DefinitionElement("schema", Map.of(), List.of(), "", Place.FILE));

    private static final String ELEMENT = "element";
    private static final String NAME = "name";

    private final Map<String, DefinitionElement> roots = new TreeMap<>();
    private final Map<String, DefinitionElement> types = new TreeMap<>();
    private final Map<Inner, Map<String, String>> ofElements = new TreeMap<>();

    /** An element within another, which is empty for the root. */
    private record Inner(String parent, String element) implements Comparable<Inner> {
        @Override
        public int compareTo(Inner other) {
            int byElement = element.compareTo(other.element);
            return byElement == 0 ? parent.compareTo(other.parent) : byElement;
        }
    }

    /**
     * Collects the values.
     *
     * @param schema the root of a schema
     */
    AttributeDefaults(DefinitionElement schema) {
        schema.children(ELEMENT).forEach(root -> roots.put(root.required(NAME), root));
        schema.children("complexType").forEach(type -> types.put(type.required(NAME), type));
        addElements("", schema);
    }

    /**
     * Returns the values for an element that leaves all its attributes out; empty if none has a value then.
     *
     * @param parent name of the element around it; empty for the root
     */
    Map<String, String> of(String parent, String element) {
        return ofElements.getOrDefault(new Inner(parent, element), Map.of());
    }

    /** Adds all elements of a part of a schema and of what it extends, but not those within elements or named types. */
    private void addElements(String parent, DefinitionElement part) {
        DefinitionElement extended = types.get(String.valueOf(part.attribute("base")));
        if (extended != null) {
            addElements(parent, extended);
        }
        for (DefinitionElement child : part.children()) {
            if (child.name().equals(ELEMENT)) {
                DefinitionElement meant = roots.get(String.valueOf(child.attribute("ref")));
                add(parent, meant == null ? child : meant);
            } else if (child.attribute(NAME) == null) {
                addElements(parent, child);
            }
        }
    }

    private void add(String parent, DefinitionElement element) {
        String name = element.required(NAME);
        String named = element.attribute("type");
        DefinitionElement type = named == null ? element.child("complexType") : types.get(named);
        Map<String, String> values = new TreeMap<>();
        for (DefinitionElement attribute : attributes(type)) {
            String value = attribute.attribute("default");
            if (value != null) {
                values.put(attribute.required(NAME), value);
            }
        }
        // A type that holds itself is met again.
        if (ofElements.put(new Inner(parent, name), values) == null && type != null) {
            addElements(name, type);
        }
    }

    /** Returns the attributes of a type, which stand in it or, if it has text, in what it extends. */
    private static List<DefinitionElement> attributes(@Nullable DefinitionElement type) {
        DefinitionElement place = type;
        for (String inner : List.of("simpleContent", "complexContent", "extension")) {
            DefinitionElement next = place == null ? null : place.child(inner);
            place = next == null ? place : next;
        }
        return place == null ? List.of() : place.children("attribute");
    }
}
