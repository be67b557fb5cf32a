package org.bellowscribe.book;

/**
 * A paragraph of the front page.
 *
 * @param heading heading above it; empty if it goes on
 * @param text the paragraph
 */
public record BookText(String heading, String text) {}
