package org.bellowscribe.musicxml;

import java.util.ArrayDeque;
import java.util.Deque;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;

/** Where in a score a parser is. */
final class SchemaPosition {

    private final Deque<String> open = new ArrayDeque<>();
    private @Nullable Locator locator;
    private String part = "";
    private String number = "";
    private int measures;
    private boolean inMeasure;

    void locator(Locator newLocator) {
        locator = newLocator;
    }

    void start(String name, Attributes attributes) {
        open.push(name);
        if (name.equals("part")) {
            part = orEmpty(attributes.getValue("id"));
            // In a timewise score the measure is outside, and the count goes on.
            measures = inMeasure ? measures : 0;
        } else if (name.equals("measure")) {
            measures++;
            number = orEmpty(attributes.getValue("number"));
            inMeasure = true;
        }
    }

    void end() {
        String name = open.pop();
        if (name.equals("part")) {
            part = "";
        } else if (name.equals("measure")) {
            inMeasure = false;
        }
    }

    /** Returns how many elements are open. */
    int depth() {
        return open.size();
    }

    /** Returns the name of the innermost open element; empty outside the outermost. */
    String element() {
        return orEmpty(open.peek());
    }

    /** Returns the name of the element around the innermost open one; empty if there is none. */
    String parent() {
        return open.stream().skip(1).findFirst().orElse("");
    }

    /** Returns the place with measure, part, line and column as far as they are known. */
    Place place() {
        int line = locator == null ? 0 : Math.max(0, locator.getLineNumber());
        int column = locator == null ? 0 : Math.max(0, locator.getColumnNumber());
        return new Place(inMeasure ? measures : 0, inMeasure ? number : "", part, line, column);
    }

    private static String orEmpty(@Nullable String value) {
        return value == null ? "" : value;
    }
}
