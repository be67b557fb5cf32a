package org.bellowscribe.annotation.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.bellowscribe.annotation.MarkAspect;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.annotation.style.PracticeLabels;
import org.bellowscribe.annotation.style.Template;
import org.bellowscribe.annotation.style.WordLabels;
import org.bellowscribe.instrument.BellowsDirection;
import org.bellowscribe.score.Event;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.Pin;
import org.jspecify.annotations.Nullable;

/** Reads words above the staff, topic by topic; each may bear the sign. */
final class WordReading {

    private final WordLabels labels;
    private final PracticeLabels practice;

    WordReading(WordLabels labels, PracticeLabels practice) {
        this.practice = practice;
        this.labels = labels;
    }

    /**
     * Returns what can be fixed, and what is unknown; words that say what follows from the rest are passed over.
     *
     * @param before how far the air button is pressed at the event before; null if it is not
     */
    List<ReadMark> read(Event event, String text, @Nullable AirUse before) {
        List<ReadMark> read = new ArrayList<>();
        for (String words : pieces(text)) {
            read.addAll(one(Pin.at(event.index()), words, before));
        }
        return read;
    }

    /** Returns how far words press the air button; null if they do not. */
    @Nullable
    AirUse air(String text, @Nullable AirUse before) {
        for (String piece : pieces(text)) {
            AirUse use = press(SignedMarks.unsigned(piece), before);
            if (use != null) {
                return use;
            }
        }
        return null;
    }

    private List<String> pieces(String text) {
        List<String> pieces = new ArrayList<>();
        for (String part : parts(text)) {
            // Of joined words each has its own sign: that at the end is the last one's.
            Map<String, String> joined = labels.directionWithAir().read(part);
            pieces.addAll(joined == null || part.isEmpty() ? List.of(part) : joined.values());
        }
        return pieces;
    }

    private @Nullable AirUse press(String words, @Nullable AirUse before) {
        String sign = labels.airGoesOn();
        if (!sign.isEmpty() && words.equals(sign)) {
            return before;
        }
        for (AirUse use : List.of(AirUse.FULL, AirUse.LIGHT)) {
            if (words.equals(labels.air(use)) || practice.onCount(use).read(words) != null) {
                return use;
            }
        }
        return null;
    }

    /** Returns the sounds of the left hand that words at a rest name; null if they name none. */
    @Nullable
    String leftHand(String text) {
        for (String part : parts(text)) {
            Map<String, String> sounds = labels.leftHand().read(part);
            if (sounds != null) {
                return sounds.get("sounds");
            }
        }
        return null;
    }

    /** Returns which row bare numbers belong to; 0 if the words do not say. */
    int row(String text, int rows) {
        for (int row = 1; row <= rows; row++) {
            String name = labels.rows().name(row, rows);
            if (!name.isEmpty() && parts(text).contains(name)) {
                return row;
            }
        }
        return 0;
    }

    /** Returns true if the words tell how far the bellows are open, and nothing else. */
    boolean isOpening(String text) {
        return parts(text).stream().allMatch(part -> {
            Map<String, String> open = labels.opening().read(part);
            return part.equals(labels.closed())
                    || part.equals(labels.fullyOpen())
                    || (open != null && open.getOrDefault("part", "").matches("\\d/\\d"));
        });
    }

    private List<String> parts(String text) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        String between = labels.between();
        while (from <= text.length()) {
            int end = between.isEmpty() ? -1 : text.indexOf(between, from);
            parts.add(text.substring(from, end < 0 ? text.length() : end).strip());
            from = end < 0 ? text.length() + 1 : end + between.length();
        }
        return parts;
    }

    private List<ReadMark> one(Pin pin, String piece, @Nullable AirUse before) {
        String words = SignedMarks.unsigned(piece);
        boolean signed = SignedMarks.isSigned(piece);
        for (BellowsDirection direction : BellowsDirection.values()) {
            if (words.equals(labels.direction(direction))) {
                return read(MarkAspect.DIRECTION, words, signed, pin.direction(direction));
            }
        }
        AirUse air = press(words, before);
        if (air != null) {
            return read(MarkAspect.AIR, words, signed, pin.air(air));
        }
        Map<String, String> hand = labels.hand().read(words);
        if (hand != null && hand.getOrDefault("button", "").matches("[1-9]\\d?")) {
            return read(MarkAspect.HAND, words, signed, pin.handOn(Integer.parseInt(hand.getOrDefault("button", ""))));
        }
        if (labels.leftHand().read(words) != null || (!signed && follows(words))) {
            return List.of();
        }
        return List.of(unknown(pin.event(), words).signed(signed));
    }

    private ReadMark unknown(int event, String words) {
        String advice = "Maybe %s, %s, %s, %s or %s."
                .formatted(
                        labels.push(),
                        labels.pull(),
                        labels.airFull(),
                        labels.airLight(),
                        labels.hand().with("button", 3));
        return ReadMark.unread(event, null, words, "is nothing that words above the staff can fix", advice);
    }

    private static List<ReadMark> read(MarkAspect aspect, String words, boolean signed, Pin pin) {
        return List.of(ReadMark.of(aspect, words, pin.event(), List.of(pin)).signed(signed));
    }

    // Openings, rows, keys and pauses are told, not decided.
    private boolean follows(String words) {
        List<String> fixed = List.of(labels.closed(), labels.fullyOpen(), labels.airBefore(), "");
        List<Template> open =
                List.of(labels.opening(), labels.sounding(), practice.tempo(), practice.alsoFor(), practice.anyStart());
        return fixed.contains(words)
                || labels.rows().areNames(words)
                || open.stream().anyMatch(template -> template.read(words) != null);
    }
}
