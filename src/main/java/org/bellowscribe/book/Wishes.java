package org.bellowscribe.book;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.jspecify.annotations.Nullable;

/**
 * The options that one element of a book file names.
 *
 * @param byName each by its name
 */
public record Wishes(NavigableMap<String, Wish> byName) {

    /** Nothing is wished. */
    public static final Wishes NONE = new Wishes(Collections.emptyNavigableMap());

    /** Attributes of a book file that are no options of marking. */
    private static final Set<String> OWN =
            Set.of("title", "order", "folder", "print", "id", "file", "position", "instrument", "leave-out");

    /** Two ways to say one thing: the nearer takes the place of both. */
    private static final List<List<String>> EITHER =
            List.of(List.of("pattern", "left-hand-part"), List.of("transpose", "key"));

    /** Copies the map. */
    public Wishes {
        byName = Collections.unmodifiableNavigableMap(new TreeMap<>(byName));
    }

    /** Returns the options among the attributes of an element. */
    static Wishes of(DefinitionElement element) {
        NavigableMap<String, Wish> wishes = new TreeMap<>();
        element.attributes().forEach((name, value) -> {
            if (!OWN.contains(name)) {
                wishes.put(name, new Wish(name, value, element.place()));
            }
        });
        return new Wishes(wishes);
    }

    /** Returns all that is wished, by name. */
    public Collection<Wish> all() {
        return byName.values();
    }

    /** Returns the wish of a name, or null if there is none. */
    public @Nullable Wish get(String name) {
        return byName.get(name);
    }

    /** Returns these wishes and, where they say nothing, wider ones. */
    Wishes over(Wishes wider) {
        NavigableMap<String, Wish> all = new TreeMap<>(wider.byName);
        for (List<String> either : EITHER) {
            if (either.stream().anyMatch(name -> byName.containsKey(name))) {
                either.forEach(name -> all.remove(name));
            }
        }
        all.putAll(byName);
        return new Wishes(all);
    }

    /** Returns what cannot be wished together. */
    List<Diagnostic> contradictions() {
        List<Diagnostic> found = new ArrayList<>();
        for (List<String> either : EITHER) {
            List<Wish> both = byName.values().stream()
                    .filter(wish -> either.contains(wish.name()))
                    .toList();
            if (both.size() > 1) {
                found.add(Diagnostic.error(
                        DiagnosticCode.BAD_DEFINITION,
                        both.get(0).place(),
                        "%s=\"%s\" and %s=\"%s\" contradict each other."
                                .formatted(
                                        both.get(0).name(),
                                        both.get(0).value(),
                                        both.get(1).name(),
                                        both.get(1).value()),
                        "Maybe leave one of them out."));
            }
        }
        return found;
    }
}
