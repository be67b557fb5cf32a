package org.bellowscribe.musicxml.read;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.bellowscribe.theory.Pitch;
import org.jspecify.annotations.Nullable;

/**
 * The line of a score that is the melody.
 *
 * @param part 0-based index of its part
 * @param voice name of its voice
 * @param homeStaff the staff on which most of it stands
 * @param onlyStaff the only staff to read, or null to follow the voice over all staves
 * @param onlyVoice true if the user named the voice
 */
record MelodyLine(
        int part, String voice, int homeStaff, @Nullable Integer onlyStaff, boolean onlyVoice) {

    /**
     * Returns the notes and rests of the melody in a measure. Where its voice is not written at all, not even as a rest,
     * the highest voice of its staff stands in for it.
     */
    List<WrittenNote> notes(MeasureContent measure) {
        List<WrittenNote> own = measure.notes().stream().filter(this::holds).toList();
        if (!own.isEmpty() || onlyVoice) {
            return own;
        }
        Map<String, List<WrittenNote>> others = measure.notes().stream()
                .filter(note -> note.staff() == homeStaff)
                .collect(Collectors.groupingBy(WrittenNote::voice, TreeMap::new, Collectors.toList()));
        List<WrittenNote> highest = own;
        for (List<WrittenNote> other : others.values()) {
            highest = height(other) > height(highest) ? other : highest;
        }
        return highest;
    }

    private boolean holds(WrittenNote note) {
        return note.voice().equals(voice) && (onlyStaff == null || note.staff() == onlyStaff);
    }

    /** Returns the mean pitch of the notes among these; -1 if there is none. */
    static double height(List<WrittenNote> notes) {
        long sum = 0;
        int count = 0;
        for (WrittenNote note : notes) {
            Pitch pitch = note.pitch();
            if (pitch != null) {
                sum += pitch.midiNumber();
                count++;
            }
        }
        return count == 0 ? -1 : (double) sum / count;
    }
}
