package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ForeignFormatTest {

    @ParameterizedTest
    @CsvSource({
        "%PDF-1.7, The file is a PDF file",
        "MThd\u0000\u0000, The file is a MIDI file",
        "X:1, The file is an ABC tune",
        "\u0089PNG, The file is a picture",
        "<!doctype html>, The file is a web page"
    })
    void fileOfAnotherKindIsCalledByItsName(String bytes, String sentence) {
        DiagnosedException refused = assertThrows(
                DiagnosedException.class, () -> ScoreDocument.decode(bytes.getBytes(StandardCharsets.ISO_8859_1)));
        Diagnostic diagnostic = refused.diagnostics().get(0);
        assertEquals(DiagnosticCode.NOT_MUSICXML, diagnostic.code());
        assertEquals(sentence + ", not a score.", diagnostic.text());
    }
}
