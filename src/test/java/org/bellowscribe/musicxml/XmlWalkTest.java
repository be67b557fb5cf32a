package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.junit.jupiter.api.Test;

class XmlWalkTest {

    private static XmlElement element(String text, String name) throws DiagnosedException {
        List<XmlElement> found = new ArrayList<>();
        XmlWalk.over(text, element -> found.add(element));
        return found.stream()
                .filter(element -> element.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static String refusal(String text) {
        return assertThrows(DiagnosedException.class, () -> XmlWalk.over(text))
                .diagnostics()
                .get(0)
                .text();
    }

    @Test
    void elementsKnowTheirPlace() throws DiagnosedException {
        XmlElement b = element("<a><!-- c -->\r\n  <b>x</b></a>", "b");
        assertEquals(13, b.before());
        assertEquals(17, b.start());
        assertEquals(20, b.contentStart());
        assertEquals(25, b.end());
        assertEquals(2, b.depth());
        assertEquals("\r\n  ", b.indentation());
        assertEquals("x", b.plainContent());
    }

    @Test
    void theIndentationIsTheLastLineBreakAndWhatFollows() throws DiagnosedException {
        assertEquals("\n\t", element("<a>\n\n \n\t<b/></a>", "b").indentation());
        assertEquals("\r ", element("<a>\r\r <b/></a>", "b").indentation());
        assertEquals("", element("<a>\n<c/>  <b/></a>", "b").indentation());
        assertEquals("\n ", element("<a>text\n <b/></a>", "b").indentation());
    }

    @Test
    void attributesAreFoundWhateverTheirQuotesAndSpaces() throws DiagnosedException {
        XmlElement a = element("<a bc='1' c = \"d='e'\"\n f='' xml:g='&lt;'/>", "a");
        assertEquals("1", a.attribute("bc"));
        assertEquals("d='e'", a.attribute("c"));
        assertEquals("", a.attribute("f"));
        assertEquals("&lt;", a.attribute("xml:g"));
        assertNull(a.attribute("b"));
        assertNull(a.attribute("d"));
        assertNull(a.attribute("a"));
    }

    @Test
    void anAttributeWithoutValueEndsTheSearch() throws DiagnosedException {
        assertNull(element("<a b c='1'/>", "a").attribute("c"));
        assertNull(element("<a b=/>", "a").attribute("b"));
        assertNull(element("<a =/>", "a").attribute("b"));
    }

    @Test
    void elementsMustNest() {
        assertEquals("The end tag </a> stands where <b> is open.", refusal("<a><b></a>"));
        assertEquals("The end tag </a> stands where no element is open.", refusal("</a>"));
        assertEquals("The element <b> has no end tag.", refusal("<a><b>"));
    }

    @Test
    void elementsMayNotNestTooDeep() throws DiagnosedException {
        XmlWalk.over("<a>".repeat(1_000) + "</a>".repeat(1_000));
        assertEquals("Elements stand inside each other more than 1000 deep.", refusal("<a>".repeat(100_000)));
    }

    @Test
    void aLongNameIsCutInMessages() {
        assertEquals("The element <" + "b".repeat(60) + "...> has no end tag.", refusal("<" + "b".repeat(1_000) + ">"));
    }
}
