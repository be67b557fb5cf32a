package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.junit.jupiter.api.Test;

class TerminalTest {

    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private String told(boolean colors, Diagnostic remark) {
        PlainStream stream = new PlainStream(err);
        new Terminal(InputStream.nullInputStream(), stream, stream, true, colors).remark("a.mxl", remark);
        return err.toString(StandardCharsets.UTF_8);
    }

    private static Diagnostic error() {
        return Diagnostic.error(DiagnosticCode.NO_NOTES, Place.FILE, "There are no notes.");
    }

    @Test
    void errorStandsOutByItsColor() {
        assertEquals("a.mxl: \u001B[31merror\u001B[0m [no-notes] There are no notes.\n", told(true, error()));
    }

    @Test
    void withoutColorsTheLineIsPlain() {
        assertEquals("a.mxl: error [no-notes] There are no notes.\n", told(false, error()));
    }

    @Test
    void noteHasNoColor() {
        Diagnostic note = Diagnostic.note(DiagnosticCode.ASSUMED, Place.FILE, "No tempo.");
        assertEquals("a.mxl: note [assumed] No tempo.\n", told(true, note));
    }

    /** The tests have no terminal, so all that can be seen here is that none is taken for one. */
    @Test
    void processWithoutATerminalHasNeitherProgressNorColors() {
        Terminal terminal = Terminal.ofProcess(Map.of());
        assertFalse(terminal.hasColors() && System.console() == null);
        assertFalse(Terminal.ofProcess(Map.of("NO_COLOR", "1")).hasColors());
        assertFalse(Terminal.ofProcess(Map.of("TERM", "dumb")).isInteractive());
    }
}
