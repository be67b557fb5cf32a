package org.bellowscribe.musicxml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

class SafeXmlTest {

    private static final String BOMB = "<!DOCTYPE a [<!ENTITY x0 'ha'>"
            + "<!ENTITY x1 '&x0;&x0;&x0;&x0;&x0;&x0;&x0;&x0;'><!ENTITY x2 '&x1;&x1;&x1;&x1;&x1;&x1;&x1;&x1;'>"
            + "<!ENTITY x3 '&x2;&x2;&x2;&x2;&x2;&x2;&x2;&x2;'><!ENTITY x4 '&x3;&x3;&x3;&x3;&x3;&x3;&x3;&x3;'>"
            + "<!ENTITY x5 '&x4;&x4;&x4;&x4;&x4;&x4;&x4;&x4;'><!ENTITY x6 '&x5;&x5;&x5;&x5;&x5;&x5;&x5;&x5;'>"
            + "]><a>&x6;</a>";

    private static final String LONG_ENTITY_OFTEN =
            "<!DOCTYPE a [<!ENTITY x '" + "h".repeat(20_000) + "'>]><a>" + "&x;".repeat(900) + "</a>";

    private static final String OUTSIDE_ENTITY =
            "<!DOCTYPE a [<!ENTITY x SYSTEM 'file:///etc/hostname'>]><a>before&x;after</a>";

    private static final String OUTSIDE_DTD = "<!DOCTYPE a SYSTEM 'http://outside.invalid/a.dtd'><a xlink:href='#'/>";

    @Test
    void theParserStopsAnEntityBomb() {
        assertThrows(SAXException.class, () -> SafeXml.reader().parse(SafeXml.source(BOMB)));
    }

    @Test
    void theParserStopsALongEntityUsedOften() {
        assertThrows(SAXException.class, () -> SafeXml.reader().parse(SafeXml.source(LONG_ENTITY_OFTEN)));
    }

    @Test
    void anOutsideEntityIsNotRead() throws Exception {
        StringBuilder text = new StringBuilder();
        DefaultHandler reader = new DefaultHandler() {
            @Override
            public void characters(char[] characters, int start, int length) {
                text.append(characters, start, length);
            }
        };
        SafeXml.parse(OUTSIDE_ENTITY, reader, reader);
        assertEquals("beforeafter", text.toString());
    }

    @Test
    void aDoctypeIsAllowedAndItsDtdNotFetched() throws Exception {
        SafeXml.reader().parse(SafeXml.source(OUTSIDE_DTD));
    }

    @Test
    void messagesAreInEnglish() {
        SAXParseException broken =
                assertThrows(SAXParseException.class, () -> SafeXml.reader().parse(SafeXml.source("<a><b></a>")));
        assertTrue(broken.getMessage().contains("must be terminated"), broken.getMessage());
    }
}
