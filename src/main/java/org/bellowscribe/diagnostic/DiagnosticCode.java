package org.bellowscribe.diagnostic;

import java.util.Locale;

/** The stable codes of remarks; each has an entry in README.md under "Messages". */
public enum DiagnosticCode {
    /** The file is not well-formed XML or cannot be decoded. */
    NOT_XML,
    /** The file is XML, but not a MusicXML score. */
    NOT_MUSICXML,
    /** The file is empty. */
    EMPTY_FILE,
    /** The score has no notes to play. */
    NO_NOTES,
    /** A value of the score cannot be read and would change the music. */
    BAD_VALUE,
    /** A value of the score is against the MusicXML schema but does not matter here. */
    ODD_VALUE,
    /** Something missing from the score was filled in. */
    ASSUMED,
    /** The order of play was ambiguous and decided by a rule. */
    PLAY_ORDER,
    /** Some measures are never played in the order of play. */
    NEVER_PLAYED,
    /** No button gives a note. */
    NO_BUTTON,
    /** No hand reaches the notes that sound together. */
    NO_REACH,
    /** The bellows cannot last. */
    NO_AIR,
    /** No other way to play a tune was found where one was asked for. */
    NO_OTHER_WAY,
    /** What a teacher has fixed cannot be played together. */
    PIN_CONFLICT,
    /** A mark that was changed by hand cannot be read or cannot be. */
    HAND_EDIT,
    /** The tune was solved for one time through because it cannot be played again and again. */
    ONCE_ONLY,
    /** The result is not proved to be the cheapest. */
    NOT_PROVED,
    /** Something that is played does not stand on the sheet, because its marks are not printed. */
    NOT_PRINTED,
    /** Measures that are written the same are played differently. */
    UNLIKE_MEASURES,
    /** A solution broke a limit when it was replayed; nothing was written. */
    REPLAY,
    /** A file or folder cannot be read. */
    UNREADABLE,
    /** A file or folder cannot be written. */
    UNWRITABLE,
    /** A result of an earlier run, or another way to play the tune, still stands where this run has written nothing. */
    OLDER_RESULT,
    /** An instrument or style file is wrong. */
    BAD_DEFINITION,
    /** Nothing has the name of an instrument, a style, a sort of marks, a part, a staff, a voice or a file of pins. */
    UNKNOWN_NAME,
    /** The tune's own lyrics limit where marks can go. */
    LYRICS,
    /** A program may show words of the marks at another note. */
    WORDS,
    /** Something that was asked of the left hand cannot be written. */
    LEFT_HAND,
    /** A stage of a tune cannot be played or has nothing to play. */
    STAGE,
    /** The tool itself broke on this tune. */
    INTERNAL;

    /** Returns the code as it is printed: kebab-case. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
