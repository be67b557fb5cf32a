package org.bellowscribe.musicxml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;

/**
 * How a text is written as bytes, found as XML 1.0 appendix F says: byte order mark, else the pattern of zero bytes, else
 * the declaration, else UTF-8.
 *
 * @param charset how characters become bytes; its encoder writes no byte order mark
 * @param byteOrderMark whether the bytes begin with U+FEFF, which is not part of the text
 */
record TextEncoding(Charset charset, boolean byteOrderMark) {

    private static final String MARK = "\uFEFF";

    // The four-byte ones first: the mark of UTF-32LE begins with that of UTF-16LE.
    private static final List<Charset> UNICODE = List.of(
            Charset.forName("UTF-32LE"),
            Charset.forName("UTF-32BE"),
            StandardCharsets.UTF_8,
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE);

    private static final Pattern DECLARED =
            Pattern.compile("^<\\?xml\\s[^>]*?\\bencoding\\s*=\\s*[\"']([A-Za-z][A-Za-z0-9._-]*)[\"']");

    private static final int DECLARATION_REACH = 1_000;

    /** Finds how bytes are written. */
    static TextEncoding of(byte[] bytes) throws DiagnosedException {
        for (Charset charset : UNICODE) {
            if (startsWith(bytes, MARK.getBytes(charset))) {
                return new TextEncoding(charset, true);
            }
        }
        for (Charset charset : UNICODE) {
            if (!charset.equals(StandardCharsets.UTF_8) && startsWith(bytes, "<".getBytes(charset))) {
                return new TextEncoding(charset, false);
            }
        }
        return new TextEncoding(declared(bytes), false);
    }

    /**
     * Returns the text of bytes.
     *
     * @throws DiagnosedException if the bytes break the rules of the encoding, or the text could not be turned back into
     *     the same bytes
     */
    String decode(byte[] bytes) throws DiagnosedException {
        int skipped = byteOrderMark ? MARK.getBytes(charset).length : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, skipped, bytes.length - skipped);
        CharsetDecoder decoder = charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate((int) Math.ceil(in.remaining() * (double) decoder.maxCharsPerByte()) + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (!result.isError()) {
            result = decoder.flush(out);
        }
        out.flip();
        if (result.isError()) {
            throw notInThisEncoding(out, bytes[in.position()]);
        }
        String text = out.toString();
        // What a strict decoder takes for UTF-8 is the only way to write it.
        if (!charset.equals(StandardCharsets.UTF_8) && !Arrays.equals(encode(text), bytes)) {
            throw refused("The encoding " + charset.name() + " cannot be written back byte by byte.");
        }
        return text;
    }

    /** Returns the bytes of a text. Characters outside the charset become character references. */
    byte[] encode(String text) {
        if (charset.equals(StandardCharsets.UTF_8)) {
            return (byteOrderMark ? MARK + text : text).getBytes(charset);
        }
        CharsetEncoder encoder = charset.newEncoder();
        String body = encoder.canEncode(text) ? text : withReferences(text, encoder);
        return (byteOrderMark ? MARK + body : body).getBytes(charset);
    }

    private static String withReferences(String text, CharsetEncoder encoder) {
        StringBuilder all = new StringBuilder(text.length() + 64);
        text.codePoints().forEach(c -> {
            String one = Character.toString(c);
            all.append(encoder.canEncode(one) ? one : "&#x" + Integer.toHexString(c) + ";");
        });
        return all.toString();
    }

    private DiagnosedException notInThisEncoding(CharSequence readSoFar, byte bad) {
        return TextPlace.notXml(
                readSoFar,
                readSoFar.length(),
                "The byte " + String.format("%02X", bad) + " cannot be read here as " + charset.name() + ".");
    }

    private static Charset declared(byte[] bytes) throws DiagnosedException {
        String head = new String(bytes, 0, Math.min(bytes.length, DECLARATION_REACH), StandardCharsets.ISO_8859_1);
        Matcher matcher = DECLARED.matcher(head);
        if (!matcher.find()) {
            return StandardCharsets.UTF_8;
        }
        String name = matcher.group(1);
        try {
            Charset charset = Charset.forName(name);
            if (!charset.canEncode()) {
                throw unknown(name);
            }
            // Read as single bytes the declaration made sense, so a wide encoding cannot be the true one: a common slip
            // of
            // programs that convert a text and leave its declaration.
            return Arrays.equals("<".getBytes(charset), new byte[] {'<'}) ? charset : StandardCharsets.UTF_8;
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw unknown(name);
        }
    }

    private static DiagnosedException unknown(String name) {
        return refused("The file says that it is written in '" + name + "', an encoding not known here.");
    }

    private static DiagnosedException refused(String sentence) {
        return new DiagnosedException(
                Diagnostic.error(DiagnosticCode.NOT_XML, Place.line(1, 1), sentence, "Maybe save the score as UTF-8."));
    }

    private static boolean startsWith(byte[] bytes, byte[] beginning) {
        return bytes.length >= beginning.length
                && Arrays.equals(bytes, 0, beginning.length, beginning, 0, beginning.length);
    }
}
