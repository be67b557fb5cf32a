package org.bellowscribe.musicxml;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/** Files of other kinds that are taken for scores: told by how their formats say that they begin. */
final class ForeignFormat {

    /** A format: its name with an article, and its first characters. */
    private record Opening(String name, String characters) {}

    private static final List<Opening> OPENINGS = List.of(
            new Opening("a PDF file", "%PDF-"),
            new Opening("a MIDI file", "MThd"),
            new Opening("an ABC tune", "%abc"),
            new Opening("an ABC tune", "X:"),
            new Opening("a picture", "\u0089PNG"),
            new Opening("a picture", "\u00ff\u00d8\u00ff"),
            new Opening("a web page", "<!DOCTYPE html"),
            new Opening("a web page", "<html"));

    private ForeignFormat() {}

    /** Throws the refusal of a file that begins like one of another format. */
    static void requireNone(byte[] bytes) throws DiagnosedException {
        for (Opening opening : OPENINGS) {
            int length = opening.characters().length();
            String start = new String(bytes, 0, Math.min(length, bytes.length), StandardCharsets.ISO_8859_1);
            if (start.equalsIgnoreCase(opening.characters())) {
                throw new DiagnosedException(Diagnostic.error(
                        DiagnosticCode.NOT_MUSICXML,
                        Place.FILE,
                        "The file is %s, not a score.".formatted(opening.name()),
                        "Maybe export the tune as MusicXML from the program that wrote it."));
            }
        }
    }
}
