package org.bellowscribe.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The part of JSON Schema that our schema uses. Stricter in one respect: an object may have no keys but those that its
 * schema describes.
 */
public final class JsonSchema {

    private static final Set<String> KNOWN = Set.of(
            "$schema",
            "title",
            "description",
            "$defs",
            "$ref",
            "type",
            "required",
            "properties",
            "additionalProperties",
            "items",
            "const",
            "enum",
            "pattern",
            "minimum",
            "maximum",
            "exclusiveMinimum",
            "allOf",
            "if",
            "then");

    private final Map<?, ?> root;
    private final List<String> objections = new ArrayList<>();

    public JsonSchema(Object root) {
        this.root = (Map<?, ?>) root;
    }

    public List<String> objections(Object value) {
        check(root, value, "");
        return objections;
    }

    private void check(Object schemaValue, Object value, String at) {
        Map<?, ?> schema = (Map<?, ?>) schemaValue;
        expect(KNOWN.containsAll(schema.keySet()), at, "unknown words in the schema: " + schema.keySet());
        if (schema.get("$ref") instanceof String ref) {
            check(((Map<?, ?>) root.get("$defs")).get(ref.substring("#/$defs/".length())), value, at);
        }
        if (schema.containsKey("const")) {
            expect(schema.get("const").equals(value), at, value + " is not " + schema.get("const"));
        }
        if (schema.get("enum") instanceof List<?> values) {
            expect(values.contains(value), at, value + " is not one of " + values);
        }
        if (schema.containsKey("type")) {
            expect(hasType(schema.get("type"), value), at, value + " is not of type " + schema.get("type"));
        }
        if (schema.get("pattern") instanceof String pattern) {
            expect(value instanceof String text && text.matches(pattern), at, value + " does not match " + pattern);
        }
        checkRange(schema, value, at);
        if (value instanceof List<?> list && schema.containsKey("items")) {
            list.forEach(item -> check(schema.get("items"), item, at + "/" + list.indexOf(item)));
        }
        if (value instanceof Map<?, ?> map && !schema.containsKey("$ref")) {
            checkObject(schema, map, at);
        }
        checkCondition(schema, value, at);
        if (schema.get("allOf") instanceof List<?> all) {
            all.forEach(each -> checkCondition((Map<?, ?>) each, value, at));
        }
    }

    // Where all of several must hold, each is a condition.
    private void checkCondition(Map<?, ?> schema, Object value, String at) {
        if (schema.containsKey("if") && new JsonSchema(root).accepts(schema.get("if"), value)) {
            checkRequired((Map<?, ?>) schema.get("then"), (Map<?, ?>) value, at);
        }
    }

    // Only conditions on single properties occur.
    private boolean accepts(Object condition, Object value) {
        Map<?, ?> properties = (Map<?, ?>) ((Map<?, ?>) condition).get("properties");
        properties.forEach((key, schema) -> check(schema, ((Map<?, ?>) value).get(key), ""));
        return objections.isEmpty();
    }

    private void checkRange(Map<?, ?> schema, Object value, String at) {
        if (value instanceof Number number) {
            double real = number.doubleValue();
            expect(real >= bound(schema, "minimum", real), at, value + " is below the minimum");
            expect(real <= bound(schema, "maximum", real), at, value + " is above the maximum");
            expect(real > bound(schema, "exclusiveMinimum", real - 1), at, value + " is not above the minimum");
        }
    }

    private static double bound(Map<?, ?> schema, String key, double otherwise) {
        return schema.get(key) instanceof Number number ? number.doubleValue() : otherwise;
    }

    private void checkObject(Map<?, ?> schema, Map<?, ?> object, String at) {
        checkRequired(schema, object, at);
        Map<?, ?> properties = schema.get("properties") instanceof Map<?, ?> map ? map : Map.of();
        Object others = schema.get("additionalProperties");
        object.forEach((key, value) -> {
            Object property = properties.containsKey(key) ? properties.get(key) : others;
            if (property == null) {
                expect(false, at, "the key " + key + " is not described");
            } else {
                check(property, value, at + "/" + key);
            }
        });
    }

    private void checkRequired(Map<?, ?> schema, Map<?, ?> object, String at) {
        if (schema.get("required") instanceof List<?> required) {
            Set<Object> missing = new LinkedHashSet<>(required);
            missing.removeAll(object.keySet());
            expect(missing.isEmpty(), at, "missing keys: " + missing);
        }
    }

    private static boolean hasType(Object type, Object value) {
        if (type instanceof List<?> types) {
            return types.stream().anyMatch(each -> hasType(each, value));
        }
        return switch (String.valueOf(type)) {
            case "object" -> value instanceof Map;
            case "array" -> value instanceof List;
            case "string" -> value instanceof String;
            case "integer" -> value instanceof Long;
            case "number" -> value instanceof Number;
            case "boolean" -> value instanceof Boolean;
            case "null" -> value == null;
            default -> false;
        };
    }

    private void expect(boolean right, String at, String objection) {
        if (!right) {
            objections.add(at + ": " + objection);
        }
    }
}
