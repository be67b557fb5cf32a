package org.bellowscribe.musicxml;

import java.util.Enumeration;
import javax.xml.XMLConstants;
import javax.xml.validation.ValidatorHandler;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.DefaultHandler;
import org.xml.sax.helpers.NamespaceSupport;

/**
 * Hands a text parsed without namespaces to a validator that needs them.
 *
 * <p>A parser with namespaces would stop at the first {@code xlink:} prefix that a score forgot to declare; here that is
 * one finding, and the rest of the score is still checked.
 */
final class SchemaFeed extends DefaultHandler {

    private static final String XLINK = "http://www.w3.org/1999/xlink";

    private final ValidatorHandler target;
    private final SchemaPosition position;
    private final SchemaFindings findings;
    private final NamespaceSupport namespaces = new NamespaceSupport();
    private final AttributesImpl plain = new AttributesImpl();
    // Open elements for which namespaces matter: from the first with a prefix or declaration inwards.
    private int pushed;

    SchemaFeed(ValidatorHandler target, SchemaPosition position, SchemaFindings findings) {
        this.target = target;
        this.position = position;
        this.findings = findings;
    }

    @Override
    public void setDocumentLocator(Locator locator) {
        position.locator(locator);
        target.setDocumentLocator(locator);
    }

    @Override
    public void startDocument() throws SAXException {
        target.startDocument();
    }

    @Override
    public void endDocument() throws SAXException {
        target.endDocument();
    }

    @Override
    public void startElement(String uri, String localName, String qName, Attributes attributes) throws SAXException {
        position.start(qName, attributes);
        if (position.depth() > XmlWalk.MAX_DEPTH) {
            findings.add("", "Elements stand inside each other more than " + XmlWalk.MAX_DEPTH + " deep.");
            throw new SchemaFindings.Enough(findings);
        }
        if (pushed == 0 && isPlain(qName, attributes)) {
            target.startElement("", qName, qName, plain(attributes));
            return;
        }
        pushed++;
        namespaces.pushContext();
        declare(attributes);
        String[] name = resolve(qName, false);
        target.startElement(name[0], name[1], qName, resolve(attributes));
    }

    // Nearly every element and attribute of a score.
    private boolean isPlain(String qName) {
        return qName.indexOf(':') < 0 && !qName.equals("xmlns");
    }

    private boolean isPlain(String qName, Attributes attributes) {
        boolean plain = isPlain(qName);
        for (int i = 0; plain && i < attributes.getLength(); i++) {
            plain = isPlain(attributes.getQName(i));
        }
        return plain;
    }

    private Attributes plain(Attributes attributes) {
        plain.clear();
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.getQName(i);
            plain.addAttribute("", name, name, attributes.getType(i), attributes.getValue(i));
        }
        return plain;
    }

    @Override
    public void endElement(String uri, String localName, String qName) throws SAXException {
        if (pushed == 0) {
            target.endElement("", qName, qName);
            position.end();
            return;
        }
        pushed--;
        String[] name = resolve(qName, false);
        target.endElement(name[0], name[1], qName);
        Enumeration<String> prefixes = namespaces.getDeclaredPrefixes();
        while (prefixes.hasMoreElements()) {
            target.endPrefixMapping(prefixes.nextElement());
        }
        namespaces.popContext();
        position.end();
    }

    @Override
    public void characters(char[] text, int start, int length) throws SAXException {
        target.characters(text, start, length);
    }

    @Override
    public void ignorableWhitespace(char[] text, int start, int length) throws SAXException {
        target.ignorableWhitespace(text, start, length);
    }

    @Override
    public void error(SAXParseException exception) throws SAXException {
        findings.error(exception);
    }

    @Override
    public void fatalError(SAXParseException exception) throws SAXException {
        findings.fatalError(exception);
    }

    private void declare(Attributes attributes) throws SAXException {
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.getQName(i);
            if (name.equals("xmlns") || name.startsWith("xmlns:")) {
                String prefix = name.length() > 6 ? name.substring(6) : "";
                if (namespaces.declarePrefix(prefix, attributes.getValue(i))) {
                    target.startPrefixMapping(prefix, attributes.getValue(i));
                }
            }
        }
    }

    private Attributes resolve(Attributes attributes) throws SAXException {
        AttributesImpl resolved = new AttributesImpl();
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.getQName(i);
            if (!name.equals("xmlns") && !name.startsWith("xmlns:")) {
                String[] parts = resolve(name, true);
                resolved.addAttribute(parts[0], parts[1], name, attributes.getType(i), attributes.getValue(i));
            }
        }
        return resolved;
    }

    /** Returns namespace and local name. */
    private String[] resolve(String name, boolean isAttribute) throws SAXException {
        String[] parts = namespaces.processName(name, new String[3], isAttribute);
        if (parts != null) {
            return parts;
        }
        String prefix = name.substring(0, Math.max(0, name.indexOf(':')));
        if (isAttribute) {
            findings.add(name, "The prefix '" + prefix + "' is used but not declared.");
        }
        String local = name.substring(name.indexOf(':') + 1);
        return new String[] {
            prefix.equals("xlink") ? XLINK : XMLConstants.NULL_NS_URI, prefix.equals("xlink") ? local : name, name
        };
    }
}
