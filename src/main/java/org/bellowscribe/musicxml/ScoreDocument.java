package org.bellowscribe.musicxml;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.bellowscribe.annotation.Annotation;
import org.bellowscribe.annotation.OwnPart;
import org.bellowscribe.annotation.style.Fonts;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/**
 * A score file as text. Immutable.
 *
 * <p>Whatever is not a mark of ours stays as it is, byte by byte: a document whose text has not changed is encoded to the
 * bytes it came from, and marks can be taken out again without a trace.
 */
public final class ScoreDocument {

    /** Bytes that a file, or the score inside a compressed file, may have. */
    public static final int MAX_BYTES = 64 << 20;

    private final byte[] original;
    private final @Nullable MxlFile container;
    private final TextEncoding encoding;
    private final String originalText;
    private final String text;
    private final MarkLook look;

    /** Null until it is asked for. */
    private @Nullable ScoreOutline outline;

    private ScoreDocument(
            byte[] original, @Nullable MxlFile container, TextEncoding encoding, String text, ScoreOutline outline) {
        this.original = original;
        this.container = container;
        this.encoding = encoding;
        this.originalText = text;
        this.text = text;
        this.outline = outline;
        this.look = MarkLook.PLAIN;
    }

    private ScoreDocument(ScoreDocument other, String text, @Nullable ScoreOutline outline, MarkLook look) {
        this.original = other.original;
        this.container = other.container;
        this.encoding = other.encoding;
        this.originalText = other.originalText;
        this.text = text;
        this.outline = outline;
        this.look = look;
    }

    /**
     * Reads the bytes of a file: a score as plain XML, or compressed ({@code .mxl}), whatever the file is called.
     *
     * <p>The text is not yet checked to be well-formed in all respects, only that its elements nest and that the
     * outermost one is that of a score.
     *
     * @throws DiagnosedException if there is no score in the bytes
     */
    public static ScoreDocument decode(byte[] bytes) throws DiagnosedException {
        if (bytes.length == 0) {
            throw new DiagnosedException(Diagnostic.error(DiagnosticCode.EMPTY_FILE, Place.FILE, "The file is empty."));
        }
        if (bytes.length > MAX_BYTES) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.UNREADABLE,
                    Place.FILE,
                    "The file has " + bytes.length + " bytes, and a score may have " + MAX_BYTES + "."));
        }
        ForeignFormat.requireNone(bytes);
        byte[] original = bytes.clone();
        MxlFile container = MxlFile.isOne(original) ? MxlFile.open(original) : null;
        byte[] score = container == null ? original : container.score();
        TextEncoding encoding = TextEncoding.of(score);
        String text = encoding.decode(score);
        ScoreOutline outline = ScoreOutline.of(text);
        ScoreKind.requireScore(outline.rootName());
        EntityNotes.requireNone(text, outline.noteCount());
        return new ScoreDocument(original, container, encoding, text, outline);
    }

    /** Returns the score's text, with line ends as in the file and without byte order mark. */
    public String text() {
        return text;
    }

    /** Returns the name of the outermost element: {@code score-partwise} or {@code score-timewise}. */
    public String rootName() {
        return outline().rootName();
    }

    /** Returns what the outermost element makes of the file. */
    public ScoreKind kind() {
        return ScoreKind.of(rootName());
    }

    /** Returns the title of the book that the score says it is taken from; empty if it does not say. */
    public String bookTitle() {
        BookTitleFinder finder = new BookTitleFinder();
        try {
            XmlWalk.over(text, finder);
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Elements that nested before no longer do.", e);
        }
        return finder.title();
    }

    /** Returns the number of {@code <note>} elements in measures. */
    public int noteCount() {
        return outline().noteCount();
    }

    // Another walk over the text: what was just written is seldom asked for its outline.
    private ScoreOutline outline() {
        if (outline == null) {
            try {
                outline = ScoreOutline.of(text);
            } catch (DiagnosedException e) {
                throw new IllegalStateException("Elements that nested before no longer do.", e);
            }
        }
        return outline;
    }

    /**
     * Returns what programs may show elsewhere than it is meant: lyrics by their numbers, words by their notes. Ask the
     * document with marks.
     */
    public List<Diagnostic> remarksOnShowing() {
        return outline().remarks(text);
    }

    /**
     * Returns our lyrics and words, each at its note, in the order of the text. Notes are counted as in the score without
     * marks.
     */
    public List<Annotation> marks() {
        return text.contains(MarkNames.PREFIX)
                ? find().stream()
                        .filter(MarkFinder.Found::isMark)
                        .map(MarkFinder.Found::annotation)
                        .toList()
                : List.of();
    }

    /** Returns the lyrics and words that are not known to be ours and have no name or id of their own. */
    public List<Annotation> otherTexts() {
        return find().stream()
                .filter(MarkFinder.Found::isOther)
                .map(MarkFinder.Found::annotation)
                .toList();
    }

    /**
     * Returns this score with lyrics and words taken for marks of ours.
     *
     * @param texts some of {@link #otherTexts()}, each with the name that a lyric shall have
     */
    public ScoreDocument adopting(Map<Annotation, String> texts) {
        return withText(MarkFinder.adopted(text, find(), texts));
    }

    private List<MarkFinder.Found> find() {
        MarkFinder finder = new MarkFinder();
        try {
            XmlWalk.over(text, finder);
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Elements that nested before no longer do.", e);
        }
        return finder.found();
    }

    /** Returns how many marks of ours there are. */
    public int markCount() {
        try {
            return MarkRemover.count(text);
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Elements that nested before no longer do.", e);
        }
    }

    /** Returns this score without any mark of ours. */
    public ScoreDocument withoutMarks() {
        try {
            return withText(MarkRemover.strip(text));
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Elements that nested before no longer do.", e);
        }
    }

    /** Returns this score, ready for marks in fonts and colors, with a filler on lines that say nothing at a note. */
    public ScoreDocument inFonts(Fonts fonts, String filler) {
        return new ScoreDocument(this, text, outline, new MarkLook(fonts, filler));
    }

    /**
     * Returns this score with the given marks and no other marks of ours.
     *
     * @param annotations marks in any order, whose notes are counted in the score without marks
     * @throws IllegalArgumentException if a mark belongs to no note, has no text or claims the place of another
     */
    public ScoreDocument withMarks(List<Annotation> annotations) {
        return withMarks(annotations, null);
    }

    /**
     * Returns this score with the given marks and part and no other marks of ours.
     *
     * @param annotations marks in any order, whose notes are counted in the score without marks
     * @param leftHand a part to add behind those of the score; null for none
     * @throws IllegalArgumentException if a mark belongs to no note, has no text or claims the place of another
     */
    public ScoreDocument withMarks(List<Annotation> annotations, @Nullable OwnPart leftHand) {
        return leftHand == null
                ? withParts(annotations, "", List.of())
                : withParts(annotations, leftHand.melody(), List.of(new PartAddition.Own(leftHand)));
    }

    /**
     * Returns this score with the given marks and parts and no other marks of ours.
     *
     * @param annotations marks in any order, whose notes are counted in the score without marks
     * @param melody id of the part with the melody; of no meaning without parts
     * @param parts parts to add behind those of the score
     * @throws IllegalArgumentException if a mark belongs to no note, has no text or claims the place of another
     */
    public ScoreDocument withParts(List<Annotation> annotations, String melody, List<PartAddition> parts) {
        ScoreDocument bare = withoutMarks();
        try {
            int highest = bare.outline().lyrics().highestOfScore();
            String marked = MarkWriter.write(bare.text, new MarkElements(highest, look), annotations);
            String all = parts.isEmpty() ? marked : PartWriter.write(marked, kind(), melody, parts);
            return new ScoreDocument(bare, all, null, look);
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Elements that nested before no longer do.", e);
        }
    }

    /**
     * Returns this score without marks, the notes of a part small and silent.
     *
     * @param part id of the part
     */
    public ScoreDocument withCueNotes(String part) {
        ScoreDocument bare = withoutMarks();
        try {
            return bare.withText(CueNotes.of(bare.text, part));
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Elements that nested before no longer do.", e);
        }
    }

    /**
     * Returns this score without marks, transposed: notes, keys, chord symbols and accidentals of every part.
     *
     * @param semitones how much higher, lower if negative
     * @throws DiagnosedException if a note would leave the octaves that MusicXML has
     */
    public ScoreDocument transposed(int semitones) throws DiagnosedException {
        ScoreDocument bare = withoutMarks();
        return semitones == 0 ? bare : bare.withText(ScoreTransposer.transpose(bare.text, semitones));
    }

    /**
     * Returns this file with another text.
     *
     * @throws IllegalArgumentException if the elements of the text do not nest
     */
    public ScoreDocument withText(String newText) {
        if (newText.equals(text)) {
            return this;
        }
        try {
            return new ScoreDocument(this, newText, ScoreOutline.of(newText), look);
        } catch (DiagnosedException e) {
            throw new IllegalArgumentException("The text must be that of a score.", e);
        }
    }

    /**
     * Returns the bytes of the file: those it came from if the text is the same; else the text in the same encoding, and
     * compressed if the file was. Characters that the encoding lacks become character references.
     */
    public byte[] encode() {
        if (text.equals(originalText)) {
            return original.clone();
        }
        byte[] score = encoding.encode(text);
        if (container == null) {
            return score;
        }
        byte[] bare = encoding.encode(withoutMarks().text);
        return Arrays.equals(score, bare) ? container.withBareScore(score) : container.withMarkedScore(score, bare);
    }
}
