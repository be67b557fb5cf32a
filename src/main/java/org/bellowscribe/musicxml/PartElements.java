package org.bellowscribe.musicxml;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import org.audiveris.proxymusic.AboveBelow;
import org.audiveris.proxymusic.Accidental;
import org.audiveris.proxymusic.AccidentalValue;
import org.audiveris.proxymusic.Attributes;
import org.audiveris.proxymusic.Clef;
import org.audiveris.proxymusic.ClefSign;
import org.audiveris.proxymusic.Direction;
import org.audiveris.proxymusic.DirectionType;
import org.audiveris.proxymusic.Empty;
import org.audiveris.proxymusic.EmptyPlacement;
import org.audiveris.proxymusic.Fingering;
import org.audiveris.proxymusic.FormattedTextId;
import org.audiveris.proxymusic.Forward;
import org.audiveris.proxymusic.Key;
import org.audiveris.proxymusic.Lyric;
import org.audiveris.proxymusic.Notations;
import org.audiveris.proxymusic.Note;
import org.audiveris.proxymusic.NoteType;
import org.audiveris.proxymusic.ObjectFactory;
import org.audiveris.proxymusic.Pitch;
import org.audiveris.proxymusic.Rest;
import org.audiveris.proxymusic.StartStop;
import org.audiveris.proxymusic.Step;
import org.audiveris.proxymusic.Syllabic;
import org.audiveris.proxymusic.Technical;
import org.audiveris.proxymusic.TextElementData;
import org.audiveris.proxymusic.Tie;
import org.audiveris.proxymusic.Tied;
import org.audiveris.proxymusic.TiedType;
import org.audiveris.proxymusic.Time;
import org.audiveris.proxymusic.TimeModification;
import org.audiveris.proxymusic.Unpitched;
import org.audiveris.proxymusic.YesNo;
import org.bellowscribe.annotation.PartLook;
import org.bellowscribe.annotation.PartSyllable;
import org.bellowscribe.score.TimeSignature;
import org.bellowscribe.theory.Fraction;
import org.bellowscribe.theory.NoteName;
import org.jspecify.annotations.Nullable;

/** The elements of an added part, as objects of MusicXML. */
final class PartElements {

    private static final ObjectFactory FACTORY = new ObjectFactory();
    private static final String VOICE = "1";

    private final long divisions;

    /**
     * Creates them.
     *
     * @param divisions parts of a quarter in which durations are counted
     */
    PartElements(long divisions) {
        this.divisions = divisions;
    }

    /** Returns the clef of a part. */
    static Clef clef(PartLook look) {
        Clef clef = new Clef();
        switch (look) {
            case LEFT_HAND -> clef(clef, ClefSign.F, 4);
            case MELODY -> clef(clef, ClefSign.G, 2);
            case BELLOWS -> clef.setSign(ClefSign.PERCUSSION);
        }
        return clef;
    }

    private static void clef(Clef clef, ClefSign sign, int line) {
        clef.setSign(sign);
        clef.setLine(BigInteger.valueOf(line));
    }

    static Key key(int fifths) {
        Key key = new Key();
        key.setFifths(BigInteger.valueOf(fifths));
        return key;
    }

    static Time time(TimeSignature signature) {
        Time time = new Time();
        time.getTimeSignature().add(FACTORY.createTimeBeats(String.valueOf(signature.beats())));
        time.getTimeSignature().add(FACTORY.createTimeBeatType(String.valueOf(signature.beatType())));
        return time;
    }

    Attributes divisions() {
        Attributes attributes = new Attributes();
        attributes.setDivisions(BigDecimal.valueOf(divisions));
        return attributes;
    }

    /** Returns words above the staff. */
    static Direction words(String text) {
        FormattedTextId words = new FormattedTextId();
        words.setValue(text);
        DirectionType type = new DirectionType();
        type.getWordsOrSymbol().add(words);
        Direction direction = new Direction();
        direction.setPlacement(AboveBelow.ABOVE);
        direction.getDirectionType().add(type);
        direction.setVoice(VOICE);
        return direction;
    }

    /** Returns time that is passed over. */
    Forward forward(Fraction length) {
        Forward forward = new Forward();
        forward.setDuration(duration(length));
        return forward;
    }

    /** Returns a rest for a whole measure, whatever its length. */
    Note measureRest(Fraction length) {
        Note note = timed(length, null);
        Rest rest = new Rest();
        rest.setMeasure(YesNo.YES);
        note.setRest(rest);
        return note;
    }

    /** Returns a rest of a value that can be written. */
    Note rest(NoteValue value) {
        Note note = timed(value.length(), value);
        note.setRest(new Rest());
        return note;
    }

    /**
     * Returns a note.
     *
     * @param length how long it lasts
     * @param value how it is written; null if no value fits
     * @param sign its accidental; empty for none
     */
    Note note(NoteName name, Fraction length, @Nullable NoteValue value, String sign) {
        Note note = timed(length, value);
        Pitch pitch = new Pitch();
        pitch.setStep(Step.fromValue(String.valueOf(name.letter())));
        if (name.alter() != 0) {
            pitch.setAlter(BigDecimal.valueOf(name.alter()));
        }
        pitch.setOctave(name.octave());
        note.setPitch(pitch);
        if (!sign.isEmpty()) {
            Accidental accidental = new Accidental();
            accidental.setValue(AccidentalValue.fromValue(sign));
            note.setAccidental(accidental);
        }
        return note;
    }

    /** Returns a stroke without pitch. */
    Note stroke(Fraction length, @Nullable NoteValue value) {
        Note note = timed(length, value);
        // The middle line: programs do not agree where the line of a staff with a single one lies.
        Unpitched unpitched = new Unpitched();
        unpitched.setDisplayStep(Step.B);
        unpitched.setDisplayOctave(4);
        note.setUnpitched(unpitched);
        return note;
    }

    /** Ties a note to its neighbors. */
    static void tie(Note note, boolean toBefore, boolean toNext) {
        if (toBefore) {
            tie(note, StartStop.STOP, TiedType.STOP);
        }
        if (toNext) {
            tie(note, StartStop.START, TiedType.START);
        }
    }

    private static void tie(Note note, StartStop sounding, TiedType written) {
        Tie tie = new Tie();
        tie.setType(sounding);
        note.getTie().add(tie);
        Tied tied = new Tied();
        tied.setType(written);
        if (note.getNotations().isEmpty()) {
            note.getNotations().add(new Notations());
        }
        note.getNotations().get(0).getTiedOrSlurOrTuplet().add(tied);
    }

    /** Makes a note sound with the one before it. */
    static void inChord(Note note) {
        note.setChord(new Empty());
    }

    static void addFingers(Note note, List<?> fingers) {
        Technical technical = new Technical();
        for (Object finger : fingers) {
            Fingering fingering = new Fingering();
            fingering.setValue(String.valueOf(finger));
            technical.getUpBowOrDownBowOrHarmonic().add(FACTORY.createTechnicalFingering(fingering));
        }
        Notations notations = new Notations();
        notations.getTiedOrSlurOrTuplet().add(technical);
        note.getNotations().add(notations);
    }

    /**
     * Adds a text below a note.
     *
     * @param prefix what stands before the name of the line
     */
    static void addLyric(Note note, String prefix, PartSyllable syllable) {
        TextElementData text = new TextElementData();
        text.setValue(syllable.text());
        Lyric lyric = new Lyric();
        lyric.setNumber(String.valueOf(syllable.number()));
        lyric.setName(prefix + syllable.line());
        lyric.getElisionAndSyllabicAndText().add(Syllabic.SINGLE);
        lyric.getElisionAndSyllabicAndText().add(text);
        note.getLyric().add(lyric);
    }

    private Note timed(Fraction length, @Nullable NoteValue value) {
        Note note = new Note();
        note.setDuration(duration(length));
        note.setVoice(VOICE);
        if (value != null) {
            NoteType type = new NoteType();
            type.setValue(value.type());
            note.setType(type);
            if (value.isDotted()) {
                note.getDot().add(new EmptyPlacement());
            }
            if (value.isTriplet()) {
                TimeModification three = new TimeModification();
                three.setActualNotes(BigInteger.valueOf(3));
                three.setNormalNotes(BigInteger.TWO);
                note.setTimeModification(three);
            }
        }
        return note;
    }

    private BigDecimal duration(Fraction length) {
        return BigDecimal.valueOf(length.times(Fraction.of(divisions, 1)).numerator());
    }
}
