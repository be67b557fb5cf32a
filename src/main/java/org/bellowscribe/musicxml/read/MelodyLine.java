package org.bellowscribe.musicxml.read;

import org.jspecify.annotations.Nullable;

/**
 * The line of a score that is the melody.
 *
 * @param part 0-based index of its part
 * @param voice name of its voice
 * @param staff the only staff to read, or null to follow the voice over all staves
 */
record MelodyLine(int part, String voice, @Nullable Integer staff) {

    boolean holds(WrittenNote note) {
        return note.voice().equals(voice) && (staff == null || note.staff() == staff);
    }
}
