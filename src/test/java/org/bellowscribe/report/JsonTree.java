package org.bellowscribe.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON into maps, lists, strings, numbers, booleans and null. */
public final class JsonTree {

    private JsonTree() {}

    /** Reads one value; a key that is written twice in one object is an error. */
    public static Object read(String text) throws IOException {
        try (JsonParser json =
                new JsonFactory().createParser(text).enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)) {
            json.nextToken();
            Object value = value(json);
            if (json.nextToken() != null) {
                throw new IOException("There is more after the value.");
            }
            return value;
        }
    }

    /** Returns the value of a key of an object. */
    public static Object get(Object object, String key) {
        return ((Map<?, ?>) object).get(key);
    }

    private static Object value(JsonParser json) throws IOException {
        return switch (json.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> object = new LinkedHashMap<>();
                while (json.nextToken() != JsonToken.END_OBJECT) {
                    String key = json.currentName();
                    json.nextToken();
                    object.put(key, value(json));
                }
                yield object;
            }
            case START_ARRAY -> {
                List<Object> array = new ArrayList<>();
                while (json.nextToken() != JsonToken.END_ARRAY) {
                    array.add(value(json));
                }
                yield array;
            }
            case VALUE_STRING -> json.getText();
            case VALUE_NUMBER_INT -> json.getLongValue();
            case VALUE_NUMBER_FLOAT -> json.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_NULL -> null;
            default -> throw new IOException("Unexpected " + json.currentToken());
        };
    }
}
