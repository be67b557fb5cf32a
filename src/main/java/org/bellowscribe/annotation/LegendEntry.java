package org.bellowscribe.annotation;

/**
 * What a sign on the sheet means.
 *
 * @param sign the sign as it is written, at an example
 * @param meaning words for a player who sees it for the first time; begins with a small letter, no full stop
 */
public record LegendEntry(String sign, String meaning) {}
