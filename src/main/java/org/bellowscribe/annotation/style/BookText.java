package org.bellowscribe.annotation.style;

import java.util.Locale;

/**
 * What stands around the tunes of a book, on front page and index, and on sheets about what is new. Each has an attribute of
 * its name in a style's {@code <book>} element, places stand in braces there; the comments say it in English.
 */
public enum BookText implements Wording {
    /** {@code {title}}: index. */
    INDEX,
    /** Index of the edition for {@code {name}}. */
    INDEX_FOR,
    /** Edition for {@code {name}}. */
    EDITION_FOR,
    /** no. */
    NUMBER,
    /** tune. */
    TUNE,
    /** page. */
    PAGE,
    /** begins. */
    BEGINS,
    /** key. */
    KEY,
    /** time. */
    TIME,
    /** grade. */
    GRADE,
    /** new things. */
    NEW_COUNT,
    /** reversals. */
    REVERSALS,
    /** air marks. */
    AIR_MARKS,
    /** open at start. */
    OPENING,
    /** new in this tune. */
    NEWS,
    /** difficulty. */
    WHY,
    /** for the pupil. */
    NOTES,
    /** problems. */
    PROBLEMS,
    /** file. */
    FILE,
    /** further sheets. */
    FURTHER,
    /** Not in this edition. */
    MISSING,
    /** The tunes stand as the book file lists them; the sum of the squares of their new things is {@code {sum}}. */
    LISTED,
    /** The tunes stand so that each brings as little new as can be: the sum of the squares of their new things is {@code {sum}}, the least that can be. */
    LEAST,
    /** The tunes stand so that each brings as little new as can be: the sum of the squares of their new things is {@code {sum}}, at most {@code {more}} more than the least. */
    NEARLY,
    /** Take care of yourself and of the box. */
    CAUTIONS,
    /** What the signs mean. */
    SIGNS,
    /** sign. */
    SIGN,
    /** meaning. */
    MEANING,
    /** The buttons of this book. */
    BUTTONS,
    /** Only the notes that occur in this book are written in: {@code {count}} of the melody. Upper half pushed, lower half pulled. */
    USED,
    /** Never force the bellows open or closed without a sounding note or the air button: that damages the box and strains the arm. When they run out, stop or press the air button. */
    CAUTION_FORCE,
    /** Do not pull the bellows farther open than is comfortable. */
    CAUTION_FAR,
    /** Take breaks, and leave off before you are tired. Students of music felt more strained after 45 minutes without a break. */
    CAUTION_BREAKS,
    /** Sit with both feet on the floor and the shoulders relaxed. Playing while standing strains shoulders and back. */
    CAUTION_SEAT,
    /** Set the straps so that the box lies close and still, and the left hand has room under its strap without gripping. Pull against the strap, not with the fingers. */
    CAUTION_STRAPS,
    /** If anything hurts or goes numb, stop, and ask a teacher; if it does not pass, a health professional. No marks on a sheet know your hands. */
    CAUTION_PAIN,
    /** common practice, no source. */
    NO_SOURCE,
    /** the rest: common practice, no source. */
    ELSE_NO_SOURCE,
    /** New: {@code {things}}. */
    NEW_LINE,
    /** Signs: {@code {things}}. */
    SIGNS_LINE,
    /** button. */
    ONE_BUTTON,
    /** buttons. */
    MANY_BUTTON,
    /** bass. */
    ONE_BASS,
    /** basses. */
    MANY_BASS,
    /** chord. */
    ONE_CHORD,
    /** chords. */
    MANY_CHORD,
    /** reversal. */
    ONE_REVERSAL,
    /** reversals. */
    MANY_REVERSAL,
    /** row change. */
    ONE_ROW_CHANGE,
    /** row changes. */
    MANY_ROW_CHANGE,
    /** place of the hand. */
    ONE_HAND_PLACE,
    /** places of the hand. */
    MANY_HAND_PLACE,
    /** air button. */
    ONE_AIR,
    /** air button. */
    MANY_AIR,
    /** time. */
    ONE_TIME,
    /** times. */
    MANY_TIME,
    /** key. */
    ONE_KEY,
    /** keys. */
    MANY_KEY,
    /** rhythm. */
    ONE_RHYTHM,
    /** rhythms. */
    MANY_RHYTHM,
    /** in a rest. */
    TURN_REST,
    /** on one button. */
    TURN_HELD,
    /** between two buttons of a row. */
    TURN_ROW,
    /** with a change of row. */
    TURN_OTHER_ROW,
    /** {@code {from}} to {@code {to}}. */
    ROW_TO,
    /** double whole. */
    DOUBLE_WHOLE,
    /** whole. */
    WHOLE,
    /** half. */
    HALF,
    /** quarter. */
    QUARTER,
    /** eighth. */
    EIGHTH,
    /** 16th. */
    SIXTEENTH,
    /** 32nd. */
    THIRTY_SECOND,
    /** dotted {@code {note}}. */
    DOTTED,
    /** double-dotted {@code {note}}. */
    DOUBLE_DOTTED,
    /** triplet {@code {note}}. */
    TRIPLET,
    /** {@code {note}} rest. */
    NOTE_REST,
    /** {@code {part}} of a quarter. */
    PART_OF_QUARTER,
    /** Grade {@code {grade}} of 9, {@code {points}} points; most of them: {@code {terms}}. */
    GRADED,
    /** notes a second. */
    TERM_NOTES,
    /** notes off the push of the home row. */
    TERM_OFF_PUSH,
    /** notes that lie one way only. */
    TERM_ONE_WAY,
    /** quick reversals. */
    TERM_REVERSALS,
    /** quick held reversals. */
    TERM_HELD_REVERSALS,
    /** turns inside runs. */
    TERM_QUICK_TURNS,
    /** quick row changes. */
    TERM_ROW_CHANGES,
    /** moves of the hand. */
    TERM_SHIFTS,
    /** quick leaps. */
    TERM_LEAPS,
    /** stretches. */
    TERM_STRETCHES,
    /** range beyond an octave. */
    TERM_RANGE,
    /** left hand between notes. */
    TERM_LEFT_HAND_BETWEEN,
    /** basses on their twin button. */
    TERM_TWIN_BASSES,
    /** drift of the bellows. */
    TERM_DRIFT,
    /** air marks. */
    TERM_AIR,
    /** longest run without a breath. */
    TERM_RUN,
    /** row {@code {row}}. */
    DRAWING_ROW,
    /** column {@code {column}}. */
    DRAWING_COLUMN,
    /** Buttons of {@code {name}}. */
    DRAWING_TITLE,
    /** Melody, {@code {hand}}: row 1 is away from the bellows, button 1 nearest the chin. C4 is middle C. */
    DRAWING_MELODY,
    /** Melody, both hands: button 1 lies under the little finger of the left hand, buttons 6, 16 and 26 under the right index finger. */
    DRAWING_BOTH_HANDS,
    /** Basses, {@code {hand}}: capital letter bass, small letter chord (m for minor); button 1 nearest the chin. */
    DRAWING_BASSES,
    /** Basses, {@code {hand}}: capital letter bass, small letter chord (without third); button 1 nearest the chin. */
    DRAWING_OPEN_BASSES,
    /** No bass side. */
    DRAWING_NO_BASSES,
    /** left hand. */
    LEFT_HAND,
    /** right hand. */
    RIGHT_HAND,
    /** right hand alone. */
    STAGE_RIGHT_HAND,
    /** bellows alone. */
    STAGE_BELLOWS,
    /** left hand alone. */
    STAGE_LEFT_HAND,
    /** both hands. */
    STAGE_BOTH,
    /** both hands, fewer helps. */
    STAGE_FADING,
    /** as it is played. */
    STAGE_AS_PLAYED,
    /** exercises. */
    EXERCISES,
    /** exercises in turn. */
    EXERCISES_MIXED;

    @Override
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
