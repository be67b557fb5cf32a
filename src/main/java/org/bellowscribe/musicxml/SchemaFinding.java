package org.bellowscribe.musicxml;

import org.bellowscribe.diagnostic.Place;

/**
 * Something in a score that is against the MusicXML schema or against XML.
 *
 * @param place line and column, and the measure and part if it is in one
 * @param element name of the element concerned; empty if unknown
 * @param parent name of the element around it; empty if there is none
 * @param attribute name of the attribute concerned; empty if it is about the element itself
 * @param message one sentence in English
 */
public record SchemaFinding(Place place, String element, String parent, String attribute, String message) {}
