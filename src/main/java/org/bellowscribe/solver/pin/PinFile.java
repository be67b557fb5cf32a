package org.bellowscribe.solver.pin;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.solver.Pin;
import org.bellowscribe.solver.Pins;
import org.bellowscribe.solver.Task;

/** A file of pins, in the form of {@code schemas/pins.xsd}; what it means depends on the tune and the instrument. */
public final class PinFile {

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("pins.xsd");

    private final List<DefinitionElement> entries;

    private PinFile(List<DefinitionElement> entries) {
        this.entries = entries;
    }

    /**
     * Reads a file.
     *
     * @throws DiagnosedException with line and column, if it is against the schema
     * @throws IOException if the stream cannot be read
     */
    public static PinFile read(InputStream stream) throws DiagnosedException, IOException {
        return new PinFile(SCHEMA.read(stream).children("pin"));
    }

    /**
     * Returns the pins of a tune on an instrument, in the order of the file.
     *
     * @param task the tune in the key in which it is played
     * @throws DiagnosedException with line and column in the file, one for each pin that cannot be
     */
    public Pins of(Task task) throws DiagnosedException {
        List<Pin> pins = new ArrayList<>();
        List<Diagnostic> problems = new ArrayList<>();
        PinReader reader = new PinReader(task);
        for (DefinitionElement entry : entries) {
            try {
                pins.add(reader.read(entry));
            } catch (DiagnosedException e) {
                problems.addAll(e.diagnostics());
            }
        }
        if (!problems.isEmpty()) {
            throw new DiagnosedException(problems);
        }
        return new Pins(pins);
    }
}
