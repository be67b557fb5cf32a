package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class XmlTokensTest {

    private static List<String> tokens(String text) throws DiagnosedException {
        List<String> seen = new ArrayList<>();
        XmlTokens tokens = new XmlTokens(text);
        while (tokens.next()) {
            seen.add(tokens.kind() + " " + text.substring(tokens.start(), tokens.end()));
        }
        return seen;
    }

    private static String refusal(String text) {
        return assertThrows(DiagnosedException.class, () -> tokens(text))
                .diagnostics()
                .get(0)
                .print("f");
    }

    @Test
    void tagsAreToldApart() throws DiagnosedException {
        assertEquals(
                List.of("START <a b='1'>", "EMPTY <c />", "EMPTY <d/>", "END </a >"),
                tokens("<a b='1'>x<c />y<d/></a >"));
    }

    @Test
    void aGreaterThanSignInQuotesEndsNoTag() throws DiagnosedException {
        assertEquals(List.of("EMPTY <a b='>' c=\"/>'\"/>"), tokens("<a b='>' c=\"/>'\"/>"));
    }

    @Test
    void tagsInsideOtherMarkupAreNoTags() throws DiagnosedException {
        assertEquals(
                List.of("OTHER <?x <a> ?>", "OTHER <!-- <a> -> -->", "OTHER <![CDATA[ <a> ]> ]]>"),
                tokens("<?x <a> ?><!-- <a> -> --> > <![CDATA[ <a> ]> ]]>"));
    }

    @Test
    void aDoctypeEndsBehindItsSubset() throws DiagnosedException {
        String doctype = "<!DOCTYPE a PUBLIC '>' \"[\" [ <!ENTITY b ']><x>'> <!-- it's ]> --> <?p ]> ?> %c; ] >";
        assertEquals(List.of("OTHER " + doctype, "EMPTY <a/>"), tokens(doctype + "<a/>"));
    }

    @Test
    void theNameEndsAtSpaceOrSlash() throws DiagnosedException {
        XmlTokens tokens = new XmlTokens("<xlink:a\tb='1'/>");
        tokens.next();
        assertEquals("xlink:a", tokens.name());
    }

    @Test
    void unclosedMarkupIsRefusedWithItsPlace() {
        assertEquals(
                "f: line 2, column 3: error [not-xml] The comment is not closed.\n"
                        + "  Maybe export the score again from the program that wrote it.",
                refusal("<a>\n  <!-- "));
        for (String text :
                List.of("<a", "<a b='>", "<a <b>", "<![CDATA[", "<?x", "<!DOCTYPE", "<!DOCTYPE a [ ", "< a>")) {
            assertEquals(true, refusal(text).contains("line 1, column 1: error [not-xml]"), text);
        }
    }
}
