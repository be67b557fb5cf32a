package org.bellowscribe.definition;

import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The forms of values in words, as a schema documents them. */
final class ValueForms {

    private final Map<String, String> ofTypes = new TreeMap<>();
    private final Map<String, String> ofElements = new TreeMap<>();
    private final SortedSet<String> attributes = new TreeSet<>();

    /**
     * Collects the forms.
     *
     * @param schema the root of a schema; the same element name has the same type everywhere
     */
    ValueForms(DefinitionElement schema) {
        schema.children("simpleType").forEach(this::addSimpleType);
        schema.children("complexType").forEach(this::addComplexType);
        addElements(schema);
    }

    /** Returns the form of the values of a type, or null if the schema does not document it. */
    @Nullable
    String ofType(String type) {
        return ofTypes.get(type);
    }

    /** Returns the form of the text of an element, or null if the schema does not document it. */
    @Nullable
    String ofElement(String element) {
        return ofElements.get(element);
    }

    private void addSimpleType(DefinitionElement type) {
        DefinitionElement annotation = type.child("annotation");
        DefinitionElement words = annotation == null ? null : annotation.child("documentation");
        if (words != null) {
            ofTypes.put(type.required("name"), words.text());
        }
    }

    /** A complex type with simple content has the form of the simple type that it extends. */
    private void addComplexType(DefinitionElement type) {
        DefinitionElement content = type.child("simpleContent");
        DefinitionElement extension = content == null ? null : content.child("extension");
        String form = extension == null ? null : ofTypes.get(extension.required("base"));
        if (form != null) {
            ofTypes.put(type.required("name"), form);
        }
    }

    /** Returns the names of all attributes that the schema knows somewhere. */
    SortedSet<String> attributes() {
        return attributes;
    }

    private void addElements(DefinitionElement parent) {
        for (DefinitionElement child : parent.children()) {
            String attribute = child.name().equals("attribute") ? child.attribute("name") : null;
            if (attribute != null) {
                attributes.add(attribute);
            }
            String type = child.attribute("type");
            String form = type == null || !child.name().equals("element") ? null : ofTypes.get(type);
            if (form != null) {
                ofElements.put(child.required("name"), form);
            }
            addElements(child);
        }
    }
}
