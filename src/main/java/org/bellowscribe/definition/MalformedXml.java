package org.bellowscribe.definition;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;
import org.xml.sax.SAXParseException;

/**
 * Puts what the XML parser of the JDK says of a file that it cannot parse into the words of this tool. What is not known
 * here keeps the parser's sentence.
 */
final class MalformedXml {

    private static final String AMPERSAND = "A sign & stands alone.";
    private static final String WRITE_AMPERSAND = "Write &amp; for it.";

    /** Where a number is asked for stands what the parser has named. */
    private static final List<Slip> SLIPS = List.of(
            new Slip(
                    "Open quote is expected for attribute \"(.*)\" associated with an +element type +\"(.*)\"\\.",
                    "The value of %1$s in <%2$s> does not stand in quotes.",
                    "Write %1$s=\"...\", with straight quotes."),
            new Slip(
                    "Attribute name \"(.*)\" associated with an element type \"(.*)\" must be followed by the ' = ' .*",
                    "%1$s in <%2$s> has no value.",
                    "Write %1$s=\"...\"."),
            new Slip(
                    "The value of attribute \"(.*)\" associated with an element type \"(.*)\" must not contain the '<' .*",
                    "The value of %1$s in <%2$s> goes on to a sign <.",
                    "Maybe its second quote is missing; for the sign itself write &lt;."),
            new Slip("The entity name must immediately follow the '&' .*", AMPERSAND, WRITE_AMPERSAND),
            new Slip(
                    "The reference to entity \"(amp|lt|gt|quot|apos)\" must end with the ';' delimiter\\.",
                    "&%1$s lacks its semicolon.",
                    "Write &%1$s;."),
            new Slip("The reference to entity .* must end with the ';' delimiter\\.", AMPERSAND, WRITE_AMPERSAND),
            new Slip(
                    "The entity \"(.*)\" was referenced, but not declared\\.",
                    "&%1$s; stands for nothing here.",
                    "Maybe write the character itself; for a sign & write &amp;."),
            new Slip(
                    "Attribute \"(.*)\" was already specified for element \"(.*)\"\\.",
                    "%1$s stands twice in <%2$s>.",
                    "Leave one of them out."),
            new Slip(
                    "Element type \"(.*)\" must be followed by either attribute specifications, .*",
                    "In the tag <%1$s> stands something that is neither an attribute nor its end.",
                    "Maybe a space is missing between two attributes, or > at the end."),
            new Slip(
                    "The content of elements must consist of well-formed character data or markup\\.",
                    "A sign < stands here that begins no tag.",
                    "Write &lt; for it; a tag has no space behind its <."),
            new Slip(
                    "The string \"--\" is not permitted within comments\\.",
                    "Two hyphens stand within a comment.",
                    "Write one, or a space between them."),
            new Slip(
                    "The processing instruction target matching .*",
                    "Something stands before <?xml, which must be the very first of the file.",
                    "Maybe delete what stands before it, empty lines and spaces too."),
            new Slip(
                    "Content is not allowed in prolog\\.",
                    "Text stands before the first tag.",
                    "Maybe take it away, or another file is meant."),
            new Slip(
                    "(?:Content is not allowed in trailing section|The markup in the document following the root element .*)\\.",
                    "Something stands behind the end of the file's one element.",
                    "Maybe its end tag comes too early, or its first tag ends in />."));

    private MalformedXml() {}

    /** What can be wrong: the parser's sentence, ours and what to do. */
    private record Slip(Pattern pattern, String text, String advice) {

        Slip(String pattern, String text, String advice) {
            this(Pattern.compile(pattern, Pattern.DOTALL), text, advice);
        }

        @Nullable
        Diagnostic of(Place place, String sentence) {
            Matcher matcher = pattern.matcher(sentence);
            if (!matcher.matches()) {
                return null;
            }
            Object[] named = new Object[matcher.groupCount()];
            for (int i = 0; i < named.length; i++) {
                named[i] = matcher.group(i + 1);
            }
            return error(place, text.formatted(named), advice.formatted(named));
        }
    }

    /**
     * Returns what is wrong with a file.
     *
     * @param file its contents
     * @param parsed what was read of it before
     * @param e what the parser says
     */
    static Diagnostic remark(byte[] file, ElementBuilder parsed, SAXParseException e) {
        Place place = place(e);
        String sentence = String.valueOf(e.getMessage());
        Diagnostic special = new MalformedText(file).remark(place, sentence, parsed.unclosed());
        if (special != null) {
            return special;
        }
        for (Slip slip : SLIPS) {
            Diagnostic known = slip.of(place, sentence);
            if (known != null) {
                return known;
            }
        }
        return Diagnostic.error(
                DiagnosticCode.NOT_XML, place, "The file is not well-formed XML: %s".formatted(sentence));
    }

    /** Returns an error. */
    static Diagnostic error(Place place, String text, String advice) {
        return Diagnostic.error(DiagnosticCode.NOT_XML, place, text, advice);
    }

    /** Returns where the parser stands. */
    static Place place(SAXParseException e) {
        return Place.line(Math.max(0, e.getLineNumber()), Math.max(0, e.getColumnNumber()));
    }
}
