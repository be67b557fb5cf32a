package org.bellowscribe.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A picture as a program sees it. */
final class SvgText {

    private final Element root;

    SvgText(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        root = factory.newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();
    }

    Element root() {
        return root;
    }

    /** Returns the one element with an id. */
    Element byId(String id) {
        List<Element> found = elements("*").stream()
                .filter(each -> each.getAttribute("id").equals(id))
                .toList();
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " elements have the id " + id);
        }
        return found.get(0);
    }

    /** Returns the elements of a class, in order. */
    List<Element> ofClass(String name) {
        return elements("*").stream()
                .filter(each -> each.getAttribute("class").equals(name))
                .toList();
    }

    /** Returns the words of all text elements of a class, in order. */
    List<String> words(String name) {
        return elements("text").stream()
                .filter(each -> each.getAttribute("class").equals(name))
                .map(Element::getTextContent)
                .toList();
    }

    /** Returns the elements of a name, in order. */
    List<Element> elements(String name) {
        NodeList nodes = root.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
