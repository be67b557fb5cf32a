package org.bellowscribe.instrument.file;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.UnknownName;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.instrument.Button;
import org.bellowscribe.instrument.Instrument;
import org.bellowscribe.instrument.LeftHandButton;
import org.jspecify.annotations.Nullable;

/** Makes an instrument of an element {@code instrument}. */
final class InstrumentReader {

    private final LibraryInstruments bases;
    private final List<Diagnostic> problems = new ArrayList<>();

    /**
     * Creates a reader for one instrument.
     *
     * @param bases the instruments that it may be based on
     */
    InstrumentReader(LibraryInstruments bases) {
        this.bases = bases;
    }

    /**
     * Reads the instrument.
     *
     * @param family family of the library, or empty
     * @throws DiagnosedException with everything that is wrong with the music of the definition
     */
    LibraryEntry read(DefinitionElement element, String family) throws DiagnosedException {
        LibraryEntry entry = examine(element, family);
        if (!problems.isEmpty()) {
            throw new DiagnosedException(problems);
        }
        return entry;
    }

    /** Returns what is wrong with the music of the definition, in the order of the file. */
    List<Diagnostic> problems() {
        return problems;
    }

    /**
     * Reads what can be read of an instrument: all but what {@link #problems()} names.
     *
     * @param family family of the library, or empty
     * @throws DiagnosedException if its base is not known
     */
    LibraryEntry examine(DefinitionElement element, String family) throws DiagnosedException {
        LibraryEntry base = base(element);
        Instrument before =
                base == null ? bases.defaults() : Transposition.of(base.instrument(), element.number("semitones"));
        AirReader air = new AirReader(element, problems);
        Instrument instrument = new Instrument(
                element.required("id"),
                element.required("name"),
                buttons(element, before),
                leftHand(element, before),
                air.bellows(before.bellows()),
                air.reeds(before.air()));
        return new LibraryEntry(
                instrument,
                family,
                SourceStatus.of(element.required("status")),
                sources(element, base),
                remarks(element, base),
                manner(element, base));
    }

    private @Nullable LibraryEntry base(DefinitionElement element) throws DiagnosedException {
        String id = element.attribute("base");
        if (id == null) {
            return null;
        }
        LibraryEntry base = bases.find(id);
        if (base == null) {
            throw new DiagnosedException(UnknownName.diagnostic("instrument", id, bases.ids(), element.place()));
        }
        return base;
    }

    private List<Button> buttons(DefinitionElement element, Instrument before) {
        RowReader rows = new RowReader(problems);
        before.buttons().forEach(button -> rows.start(new GridPlace(button.row(), button.number()), button));
        rows.read(element);
        List<Button> buttons = rows.buttons();
        if (buttons.isEmpty()) {
            rows.report(
                    element,
                    "The instrument %s has no melody buttons.".formatted(element.required("id")),
                    "Maybe give its rows, or a base.");
        }
        return element.says("mirrored")
                ? buttons.stream().map(InstrumentReader::mirrored).toList()
                : buttons;
    }

    private static Button mirrored(Button button) {
        return new Button(
                button.row(),
                button.number(),
                button.push(),
                button.pull(),
                button.hand().opposite());
    }

    private List<LeftHandButton> leftHand(DefinitionElement element, Instrument before) {
        DefinitionElement leftHand = element.child("left-hand");
        if (leftHand == null) {
            return before.leftHand();
        }
        ColumnReader columns = new ColumnReader(problems);
        if (!leftHand.says("replaces-base")) {
            before.leftHand().forEach(button -> columns.start(new GridPlace(button.column(), button.number()), button));
        }
        columns.read(leftHand);
        return leftHand.required("thirds").equals("none")
                ? columns.buttons().stream().map(Thirdless::of).toList()
                : columns.buttons();
    }

    private static @Nullable String manner(DefinitionElement element, @Nullable LibraryEntry base) {
        String own = element.attribute("manner");
        return own == null && base != null ? base.manner() : own;
    }

    private static List<String> sources(DefinitionElement element, @Nullable LibraryEntry base) {
        List<String> sources = new ArrayList<>(base == null ? List.of() : base.sources());
        element.children("source").forEach(source -> sources.add(source.text()));
        return sources;
    }

    private static List<String> remarks(DefinitionElement element, @Nullable LibraryEntry base) {
        List<String> own =
                element.children("remark").stream().map(DefinitionElement::text).toList();
        return own.isEmpty() && base != null ? base.remarks() : own;
    }
}
