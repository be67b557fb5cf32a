package org.bellowscribe.definition;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/**
 * An element of a data file that its schema has accepted.
 *
 * @param name name of the element
 * @param attributes values by attribute name, those filled in by the schema among them
 * @param children child elements in the order of the file
 * @param text character content without the white space around it; empty if there is none
 * @param place line and column of the end of the start tag
 */
public record DefinitionElement(
        String name, Map<String, String> attributes, List<DefinitionElement> children, String text, Place place) {

    /** Copies the attributes, sorted by name, and the children. */
    public DefinitionElement {
        attributes = Collections.unmodifiableMap(new TreeMap<>(attributes));
        children = List.copyOf(children);
    }

    /** Returns the value of an attribute, or null if it is absent. */
    public @Nullable String attribute(String attribute) {
        return attributes.get(attribute);
    }

    /**
     * Returns the value of an attribute.
     *
     * @throws IllegalArgumentException if it is absent, which the schema must exclude
     */
    public String required(String attribute) {
        String value = attributes.get(attribute);
        if (value == null) {
            throw new IllegalArgumentException(
                    "The element (%s) must have the attribute (%s).".formatted(name, attribute));
        }
        return value;
    }

    /** Returns the whole number in an attribute that the schema requires. */
    public int number(String attribute) {
        return Integer.parseInt(required(attribute).strip());
    }

    /** Returns true if an attribute is present and says {@code yes}. */
    public boolean says(String attribute) {
        return "yes".equals(attributes.get(attribute));
    }

    /** Returns the children of a name in the order of the file. */
    public List<DefinitionElement> children(String child) {
        return children.stream().filter(element -> element.name.equals(child)).toList();
    }

    /** Returns the first child of a name, or null if there is none. */
    public @Nullable DefinitionElement child(String child) {
        return children.stream()
                .filter(element -> element.name.equals(child))
                .findFirst()
                .orElse(null);
    }
}
