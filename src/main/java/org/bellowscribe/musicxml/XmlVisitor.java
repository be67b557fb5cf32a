package org.bellowscribe.musicxml;

/** Is told of every element of a text in document order. */
interface XmlVisitor {

    /** Called at a start tag; where the element ends is not yet known. */
    default void start(XmlElement element) {}

    /** Called at the end of an element. */
    void end(XmlElement element);
}
