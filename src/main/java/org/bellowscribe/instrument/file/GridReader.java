package org.bellowscribe.instrument.file;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/**
 * Puts the buttons that a file gives in rows or columns over those of the instrument it is based on.
 *
 * @param <B> a melody button or a left-hand button
 */
abstract class GridReader<B> {

    private final String line;
    private final SortedMap<GridPlace, B> buttons = new TreeMap<>();
    private final SortedMap<GridPlace, Place> given = new TreeMap<>();
    private final List<Diagnostic> problems;

    /**
     * Creates a reader.
     *
     * @param line name of the element that holds buttons: {@code row} or {@code column}
     * @param problems gets a remark for everything that is wrong
     */
    GridReader(String line, List<Diagnostic> problems) {
        this.line = line;
        this.problems = problems;
    }

    /**
     * Reads an element {@code button}.
     *
     * @param before the button that the base has in this place, or null if there is none
     */
    abstract @Nullable B button(GridPlace place, DefinitionElement element, @Nullable B before);

    /** Returns the button with push and pull exchanged. */
    abstract B reversed(B button);

    /** Puts a button of the base in its place. */
    final void start(GridPlace place, B button) {
        buttons.put(place, button);
    }

    /** Reads all lines of an element. */
    final void read(DefinitionElement parent) {
        for (DefinitionElement lineElement : parent.children(line)) {
            int number = lineElement.number("number");
            for (DefinitionElement element : lineElement.children()) {
                read(new GridPlace(number, element.number("number")), element);
            }
        }
    }

    /** Returns the buttons by line, then number. */
    final List<B> buttons() {
        return List.copyOf(buttons.values());
    }

    /** Reports something wrong with an element. */
    final void report(DefinitionElement element, String text, String... advice) {
        problems.add(Diagnostic.error(DiagnosticCode.BAD_DEFINITION, element.place(), text, advice));
    }

    /** Returns words such as {@code Button 3 of row 1}. */
    final String name(GridPlace place) {
        return "Button %d of %s %d".formatted(place.number(), line, place.line());
    }

    private void read(GridPlace place, DefinitionElement element) {
        Place first = given.putIfAbsent(place, element.place());
        if (first != null) {
            report(
                    element,
                    "%s is given twice: the first time in %s.".formatted(name(place), first.describe()),
                    "Maybe give it another number.");
            return;
        }
        B before = buttons.get(place);
        if (element.name().equals("button")) {
            B button = button(place, element, before);
            if (button != null) {
                buttons.put(place, button);
            }
        } else if (before == null) {
            report(
                    element,
                    "%s cannot be %sd, because the base does not have it.".formatted(name(place), element.name()));
        } else if (element.name().equals("remove")) {
            buttons.remove(place);
        } else {
            buttons.put(place, reversed(before));
        }
    }
}
