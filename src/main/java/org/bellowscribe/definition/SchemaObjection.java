package org.bellowscribe.definition;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;
import org.xml.sax.SAXParseException;

/** Puts what the schema validator of the JDK objects to into the words of this tool. */
final class SchemaObjection {

    /** The validator's own rule name, such as {@code cvc-complex-type.2.4.a}. */
    private static final Pattern RULE = Pattern.compile("^[a-zA-Z]+-[-\\w.]+: ");

    /** The validator first says which facet fails, then which attribute or element; only the second names the place. */
    private static final Pattern FACET =
            Pattern.compile("^cvc-(?:\\w+-valid|datatype-valid[\\d.]*): (?:Value )?'(?<value>.*?)' .*", Pattern.DOTALL);

    private static final Pattern ATTRIBUTE = Pattern.compile(
            "^cvc-attribute\\.3: The value '(?<value>.*)' of attribute '(?<name>.*)' on element '(?<element>.*)' is not"
                    + " valid with respect to its type, '(?<type>.*)'\\.$",
            Pattern.DOTALL);
    private static final Pattern SIMPLE_ELEMENT = Pattern.compile(
            "^cvc-type\\.3\\.1\\.3: The value '.*' of element '(?<name>.*)' is not valid\\.$", Pattern.DOTALL);
    private static final Pattern ELEMENT_WITH_ATTRIBUTES = Pattern.compile(
            "^cvc-complex-type\\.2\\.2: Element '(?<name>.*)' must have no element .*$", Pattern.DOTALL);

    private static final Pattern UNKNOWN_ATTRIBUTE = Pattern.compile(
            "^cvc-complex-type\\.3\\.2\\.2: Attribute '(?<name>.*)' is not allowed to appear in element '(?<element>.*)'\\.$",
            Pattern.DOTALL);

    private SchemaObjection() {}

    /** Returns one remark for each thing that is wrong. */
    static List<Diagnostic> remarks(List<SAXParseException> objections, ValueForms forms) {
        List<Diagnostic> remarks = new ArrayList<>();
        String value = "";
        for (SAXParseException objection : objections) {
            Matcher facet = FACET.matcher(message(objection));
            if (facet.matches()) {
                value = facet.group("value");
            } else {
                remarks.add(remark(objection, forms, value));
            }
        }
        return remarks;
    }

    private static Diagnostic remark(SAXParseException objection, ValueForms forms, String value) {
        String message = message(objection);
        Matcher attribute = ATTRIBUTE.matcher(message);
        if (attribute.matches()) {
            String text = "The value \"%s\" of %s in <%s> is not allowed."
                    .formatted(attribute.group("value"), attribute.group("name"), attribute.group("element"));
            return error(objection, text, forms.ofType(attribute.group("type")));
        }
        Matcher unknown = UNKNOWN_ATTRIBUTE.matcher(message);
        if (unknown.matches()) {
            List<String> near = NearestNames.of(unknown.group("name"), forms.attributes());
            return error(
                    objection,
                    RULE.matcher(message).replaceFirst(""),
                    near.isEmpty() || near.contains(unknown.group("name")) ? null : UnknownName.or(near));
        }
        for (Pattern pattern : List.of(SIMPLE_ELEMENT, ELEMENT_WITH_ATTRIBUTES)) {
            Matcher element = pattern.matcher(message);
            if (element.matches()) {
                String name = element.group("name");
                return error(
                        objection,
                        "The value \"%s\" of <%s> is not allowed.".formatted(value, name),
                        forms.ofElement(name));
            }
        }
        return error(objection, RULE.matcher(message).replaceFirst(""), null);
    }

    private static Diagnostic error(SAXParseException objection, String text, @Nullable String form) {
        Place place = Place.line(objection.getLineNumber(), objection.getColumnNumber());
        return form == null
                ? Diagnostic.error(DiagnosticCode.BAD_DEFINITION, place, text)
                : Diagnostic.error(DiagnosticCode.BAD_DEFINITION, place, text, "Maybe write " + form + ".");
    }

    private static String message(SAXParseException objection) {
        String message = objection.getMessage();
        return message == null ? "" : message;
    }
}
