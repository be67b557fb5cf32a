package org.bellowscribe.musicxml;

import org.jspecify.annotations.Nullable;

/**
 * Where the marks of one note go.
 *
 * @param words behind whatever stands before the note
 * @param inNotations behind the last child of the first notations that the note has; null if it has none
 * @param notations behind the last child that the schema puts before lyrics
 * @param lyric behind the last child that the schema puts before {@code <play>}
 * @param behind behind the note
 * @param isOneTag true if the note has no inside that marks could stand in
 * @param voice content of {@code <voice>} as it stands; empty if there is none
 * @param staff content of {@code <staff>} as it stands; empty if there is none
 */
record NoteAnchor(
        Anchor words,
        @Nullable Anchor inNotations,
        Anchor notations,
        Anchor lyric,
        Anchor behind,
        boolean isOneTag,
        String voice,
        String staff) {}
