package org.bellowscribe.words;

import org.bellowscribe.annotation.style.Phrase;
import org.bellowscribe.annotation.style.Wordings;
import org.bellowscribe.instrument.LeftHandKind;
import org.bellowscribe.instrument.LeftHandSound;
import org.bellowscribe.instrument.Third;
import org.bellowscribe.theory.Key;
import org.bellowscribe.theory.PitchClass;
import org.bellowscribe.theory.Spelling;

/** Names of notes, chords and keys, spoken. */
public final class SpokenNotes {

    private final Wordings<Phrase> phrases;

    /** Creates names in the language of some phrases. */
    public SpokenNotes(Wordings<Phrase> phrases) {
        this.phrases = phrases;
    }

    /** Returns the name of a note as a key spells it, without its octave. */
    String note(PitchClass note, Key key) {
        Spelling spelling = Spelling.of(note, key.fifths());
        return named(spelling.letter(), spelling.alter());
    }

    /** Returns what the left hand sounds. */
    String sound(LeftHandSound sound, Key key) {
        Phrase phrase = sound.kind() == LeftHandKind.BASS
                ? Phrase.BASS
                : sound.third() == Third.MINOR ? Phrase.CHORD_MINOR : Phrase.CHORD;
        return phrases.say(phrase, "note", note(sound.root(), key));
    }

    /** Returns the name of a key with its mode. */
    public String key(Key key) {
        Phrase mode = Phrase.valueOf(key.mode().name());
        String tonic = key.tonicName();
        int signs = tonic.length() - 1;
        return phrases.say(mode, "note", named(tonic.charAt(0), tonic.endsWith("b") ? -signs : signs));
    }

    private String named(char letter, int alter) {
        if (alter == -1 && "EAB".indexOf(letter) >= 0) {
            return phrases.say(Phrase.valueOf(letter + "_FLAT"));
        }
        String name = phrases.say(Phrase.valueOf("NOTE_" + letter));
        for (int i = 0; i < Math.abs(alter); i++) {
            name = phrases.say(alter < 0 ? Phrase.FLAT : Phrase.SHARP, "note", name);
        }
        return name;
    }
}
