package org.bellowscribe.definition;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** What is wrong with a file that is no XML, as far as only its text tells it: encodings, ends that come too early. */
final class MalformedText {

    private static final String END = "XML document structures must start and end within the same entity.";
    private static final String NO_MORE = "Premature end of file.";
    private static final String PROLOG = "Content is not allowed in prolog.";

    private static final Pattern ENCODING = Pattern.compile("Invalid byte .*|Byte .* is not a member of .*");
    private static final Pattern UNCLOSED =
            Pattern.compile("The element type \"(.*)\" must be terminated by the matching end-tag .*", Pattern.DOTALL);

    private static final Pattern NAME = Pattern.compile("[^\\s<>/]+");
    private static final String UTF_8 = "Save it as UTF-8, with encoding=\"UTF-8\" in its first line or none.";

    private final byte[] bytes;
    private final String text;

    MalformedText(byte[] file) {
        bytes = file;
        text = new String(file, StandardCharsets.UTF_8);
    }

    /**
     * Returns what is wrong, or null if the parser's sentence tells enough.
     *
     * @param place where the parser stands
     * @param sentence what it says
     * @param unclosed the innermost element that has begun and not ended; null if there is none
     */
    @Nullable
    Diagnostic remark(Place place, String sentence, @Nullable DefinitionElement unclosed) {
        Matcher element = UNCLOSED.matcher(sentence);
        if (element.matches() && unclosed != null) {
            return unclosed(place, unclosed);
        }
        if (ENCODING.matcher(sentence).matches()) {
            return wrongByte(place);
        }
        if (sentence.equals(PROLOG) && (text.startsWith("<?xml") || startsWithWideMark())) {
            return error(Place.line(1, 1), "The file is not written in the encoding that its first line names.", UTF_8);
        }
        if (sentence.equals(NO_MORE)) {
            return text.replace("\uFEFF", "").isBlank()
                    ? Diagnostic.error(
                            DiagnosticCode.EMPTY_FILE,
                            Place.line(1, 1),
                            "The file is empty.",
                            "Maybe it was not saved, or another file is meant.")
                    : error(place, "The file ends before its first tag.", "Maybe it was cut off.");
        }
        return sentence.equals(END) ? cutOff(place, unclosed) : null;
    }

    private Diagnostic unclosed(Place place, DefinitionElement element) {
        String name = element.name();
        String other = endTag(place);
        String text = "<%s> of line %d is not closed%s."
                .formatted(name, element.place().line(), other.isEmpty() ? "" : " where </%s> stands".formatted(other));
        return error(
                place,
                text,
                other.equalsIgnoreCase(name)
                        ? "Write </%s>: capitals count.".formatted(name)
                        : "Maybe write </%s> before it, or /> at the end of its tag if nothing is in it."
                                .formatted(name));
    }

    /** Returns the name of the end tag in a place; empty if it cannot be found. */
    private String endTag(Place place) {
        String line =
                text.lines().skip(Math.max(0, place.line() - 1)).findFirst().orElse("");
        int begin = place.column() - 1;
        if (begin < 2 || begin > line.length() || !line.startsWith("</", begin - 2)) {
            return "";
        }
        Matcher name = NAME.matcher(line);
        return name.find(begin) ? name.group() : "";
    }

    private Diagnostic cutOff(Place place, @Nullable DefinitionElement unclosed) {
        int comment = text.lastIndexOf("<!--");
        if (comment >= 0 && text.indexOf("-->", comment) < 0) {
            return error(
                    place,
                    "The file ends, but the comment of line %d is not closed.".formatted(lineOf(comment)),
                    "Write --> behind it.");
        }
        int tag = text.lastIndexOf('<');
        if (tag > text.lastIndexOf('>') || unclosed == null) {
            return error(
                    place,
                    "The file ends within the tag of line %d.".formatted(lineOf(tag)),
                    "Maybe it was cut off, or a > is missing.");
        }
        return error(
                place,
                "The file ends, but <%s> of line %d is not closed."
                        .formatted(unclosed.name(), unclosed.place().line()),
                "Maybe write </%s> at its end.".formatted(unclosed.name()));
    }

    private int lineOf(int index) {
        return lines(text.substring(0, Math.max(0, index)));
    }

    private static int lines(String begun) {
        return 1 + (int) begun.chars().filter(c -> c == '\n').count();
    }

    private boolean startsWithWideMark() {
        return bytes.length > 1 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFE + 0xFF && (bytes[0] & 0xFE) == 0xFE;
    }

    private static Diagnostic error(Place place, String text, String advice) {
        return Diagnostic.error(DiagnosticCode.NOT_XML, place, text, advice);
    }

    // The parser says only that one stands somewhere in what it has read at once.
    private Diagnostic wrongByte(Place place) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer good = CharBuffer.allocate(bytes.length);
        if (!StandardCharsets.UTF_8.newDecoder().decode(in, good, true).isError()) {
            return error(place, "A character is not in the encoding that the first line names.", UTF_8);
        }
        String before = good.flip().toString();
        return error(
                Place.line(lines(before), before.length() - before.lastIndexOf('\n')),
                "The byte %02X cannot be read here as UTF-8.".formatted(bytes[in.position()]),
                UTF_8);
    }
}
