package org.bellowscribe.annotation.edit;

import java.util.List;
import org.bellowscribe.annotation.MarkAspect;
import org.bellowscribe.solver.Pin;
import org.jspecify.annotations.Nullable;

/**
 * A mark, or a part of one, read back.
 *
 * @param event 0-based index of its event; -1 if it stands at no event
 * @param aspect what it is about; null if it cannot be told
 * @param text as it was found
 * @param signed true if it bears the sign that fixes it
 * @param pins what it says; empty if it cannot be read
 * @param trouble why it cannot be read, one sentence; empty if it can
 * @param advice what would be right; may be empty
 */
public record ReadMark(
        int event,
        @Nullable MarkAspect aspect,
        String text,
        boolean signed,
        List<Pin> pins,
        String trouble,
        String advice) {

    /** Copies the pins. */
    public ReadMark {
        pins = List.copyOf(pins);
    }

    static ReadMark of(MarkAspect aspect, String text, int event, List<Pin> pins) {
        return new ReadMark(event, aspect, text, false, pins, "", "");
    }

    static ReadMark unread(int event, @Nullable MarkAspect aspect, String text, String trouble, String advice) {
        return new ReadMark(event, aspect, text, false, List.of(), trouble, advice);
    }

    ReadMark signed(boolean isSigned) {
        return new ReadMark(event, aspect, text, isSigned, pins, trouble, advice);
    }

    /** Returns true if it can be read. */
    public boolean isRead() {
        return trouble.isEmpty();
    }

    /** Returns true if another mark says the same of the same. */
    public boolean agreesWith(ReadMark other) {
        return event == other.event && aspect == other.aspect && pins.equals(other.pins);
    }
}
