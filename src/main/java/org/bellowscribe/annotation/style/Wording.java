package org.bellowscribe.annotation.style;

/** Something that each language words in its own way. */
public interface Wording {

    /** Returns the name of its attribute in a file, such as {@code beat-half}. */
    String id();
}
