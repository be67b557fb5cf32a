package org.bellowscribe.book;

import org.bellowscribe.diagnostic.Place;

/**
 * An option of marking as a book file has it.
 *
 * @param name name of the option, such as {@code manner}
 * @param value its value as it is written
 * @param place where it stands in the book file
 */
public record Wish(String name, String value, Place place) {}
