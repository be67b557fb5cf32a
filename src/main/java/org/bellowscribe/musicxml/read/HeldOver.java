package org.bellowscribe.musicxml.read;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.score.PlayOrder;

/** Finds the notes that begin a measure and are tied to the note before them on every way that leads there. */
final class HeldOver {

    private final List<EventDraft> drafts;
    private final PlayOrder order;
    // What sounds last in each measure.
    private final Map<Integer, EventDraft> last = new HashMap<>();

    HeldOver(List<EventDraft> drafts, PlayOrder order) {
        this.drafts = drafts;
        this.order = order;
        drafts.forEach(draft -> last.put(draft.endMeasure(), draft));
    }

    /** Marks them. */
    void mark() {
        for (EventDraft draft : drafts) {
            boolean begins = draft.onset().numerator() == 0;
            if (begins && !draft.isRest() && isAlwaysTied(draft)) {
                draft.holdOver();
            }
        }
    }

    private boolean isAlwaysTied(EventDraft draft) {
        boolean any = false;
        for (int i = 0; i < order.measures().size(); i++) {
            if (order.measures().get(i) == draft.measure()) {
                EventDraft before = i == 0 ? null : last.get(order.measures().get(i - 1));
                if (before == null || before == draft || !before.isTiedTo(draft)) {
                    return false;
                }
                any = true;
            }
        }
        return any;
    }
}
