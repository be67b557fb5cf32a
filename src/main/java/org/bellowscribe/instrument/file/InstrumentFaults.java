package org.bellowscribe.instrument.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.InstrumentCheck;
import org.jspecify.annotations.Nullable;

/**
 * Everything that is wrong with an instrument file, in one go: what the schema objects to and what is wrong with the
 * music of the rest, in the order of the file, then the doubts.
 *
 * @param entry the instrument; null if there is an error
 * @param errors what makes it useless; empty if nothing
 * @param doubts what is unusual; may hold errors too
 */
record InstrumentFaults(@Nullable LibraryEntry entry, List<Diagnostic> errors, List<Diagnostic> doubts) {

    private static final Comparator<Diagnostic> IN_FILE = Comparator.comparingInt(
                    (Diagnostic remark) -> remark.place().line())
            .thenComparingInt(remark -> remark.place().column());

    /** Looks through a file whose root element is an instrument. */
    static InstrumentFaults of(DefinitionSchema.Examined file, LibraryInstruments bases) {
        List<Diagnostic> errors = new ArrayList<>(file.remarks());
        InstrumentReader reader = new InstrumentReader(bases);
        try {
            LibraryEntry entry = reader.examine(file.isRootSound() ? file.root() : mended(file.root(), bases), "");
            boolean partly = !errors.isEmpty();
            // Where every button is wrong by itself, there is no need to say that none is left.
            reader.problems().stream()
                    .filter(problem -> !partly || !entry.instrument().buttons().isEmpty())
                    .forEach(errors::add);
            errors.sort(IN_FILE);
            return errors.isEmpty()
                    ? new InstrumentFaults(entry, errors, InstrumentCheck.of(entry.instrument()))
                    : new InstrumentFaults(null, errors, InstrumentCheck.ofPart(entry.instrument()));
        } catch (DiagnosedException e) {
            errors.addAll(e.diagnostics());
            errors.sort(IN_FILE);
            return new InstrumentFaults(null, errors, List.of());
        }
    }

    /** Returns an element that can be read although its attributes are wrong: with the base and the rows that it has. */
    private static DefinitionElement mended(DefinitionElement root, LibraryInstruments bases) {
        SortedMap<String, String> attributes =
                new TreeMap<>(Map.of("id", "own", "name", "own", "status", "own", "semitones", "0", "mirrored", "no"));
        String base = root.attribute("base");
        if (base != null && bases.ids().contains(base)) {
            attributes.put("base", base);
        }
        return new DefinitionElement(root.name(), attributes, root.children(), root.text(), root.place());
    }
}
