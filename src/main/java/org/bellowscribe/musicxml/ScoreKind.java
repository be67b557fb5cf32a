package org.bellowscribe.musicxml;

import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** What an XML file is, by the name of its outermost element. */
public enum ScoreKind {
    /** A score that holds parts, which hold measures. */
    PARTWISE,
    /** A score that holds measures, which hold parts. */
    TIMEWISE,
    /** A list of scores. */
    OPUS,
    /** The table of contents of a compressed score. */
    CONTAINER,
    /** A book: what to make of many scores, in this tool's own form. */
    BOOK,
    /** Anything else. */
    OTHER;

    /** Returns the kind of a file whose outermost element has a name. */
    public static ScoreKind of(String rootName) {
        return switch (rootName) {
            case "score-partwise" -> PARTWISE;
            case "score-timewise" -> TIMEWISE;
            case "opus" -> OPUS;
            case "container" -> CONTAINER;
            case "book" -> BOOK;
            default -> OTHER;
        };
    }

    /**
     * Returns the kind of a file by its first bytes; null if they do not tell, as those of a compressed file.
     *
     * @param beginning bytes from the start of a file, in whole or in part
     */
    public static @Nullable ScoreKind ofBeginning(byte[] beginning) {
        try {
            ForeignFormat.requireNone(beginning);
        } catch (DiagnosedException e) {
            return OTHER;
        }
        try {
            TextEncoding encoding = TextEncoding.of(beginning);
            XmlTokens tokens = new XmlTokens(new String(beginning, encoding.charset()));
            while (tokens.next()) {
                if (tokens.kind() != XmlTokens.Kind.OTHER) {
                    return of(tokens.name());
                }
            }
            return null;
        } catch (DiagnosedException e) {
            // The markup may end behind these bytes.
            return null;
        }
    }

    /** Tells whether it is a score. */
    public boolean isScore() {
        return this == PARTWISE || this == TIMEWISE;
    }

    /** Throws the refusal of a file that is no score. */
    static void requireScore(String rootName) throws DiagnosedException {
        switch (of(rootName)) {
            case PARTWISE, TIMEWISE -> {}
            case OPUS ->
                throw refusal("The file is an opus, a list of scores.", "Maybe give the scores that it lists.");
            case CONTAINER ->
                throw refusal(
                        "The file is the table of contents of a compressed score.", "Maybe give the whole .mxl file.");
            case BOOK ->
                throw refusal("The file is a book file, no score.", "Maybe mark it, alone: mark BOOK.xml --out DIR.");
            case OTHER ->
                throw refusal(
                        "The outermost element is <" + TextPlace.shortened(rootName)
                                + ">, but a score begins with <score-partwise>.",
                        "Maybe export the score as MusicXML from the program that wrote it.");
        }
    }

    private static DiagnosedException refusal(String sentence, String advice) {
        return new DiagnosedException(Diagnostic.error(DiagnosticCode.NOT_MUSICXML, Place.FILE, sentence, advice));
    }
}
