package org.bellowscribe.musicxml;

import org.bellowscribe.annotation.OwnPart;

/** A part to add to a score, behind its own parts. */
public sealed interface PartAddition {

    /**
     * A part of ours.
     *
     * @param part the part
     */
    record Own(OwnPart part) implements PartAddition {}

    /**
     * A part of another version of the same score, with the marks that stand there.
     *
     * @param id id in kebab-case, unlike that of every other part that is added
     * @param name what stands before its first line
     * @param from the other version
     * @param part id of the part there
     */
    record Copy(String id, String name, ScoreDocument from, String part) implements PartAddition {}
}
