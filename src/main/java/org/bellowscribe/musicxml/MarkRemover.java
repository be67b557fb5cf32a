package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/**
 * Takes our elements out of a text, each with the white space before it.
 *
 * <p>This gives the text back character by character because each of them was put directly behind a {@code >}, with white
 * space of its own.
 */
final class MarkRemover implements XmlVisitor {

    private record Range(int from, int to) {}

    private final List<Range> ours = new ArrayList<>();
    private @Nullable XmlElement outermost;
    // Parts in the list of parts, which are no marks besides the parts themselves.
    private int listed;

    private MarkRemover() {}

    /** Returns the text without our elements. */
    static String strip(String text) throws DiagnosedException {
        if (!text.contains(MarkNames.PREFIX)) {
            return text;
        }
        MarkRemover remover = new MarkRemover();
        XmlWalk.over(text, remover);
        StringBuilder stripped = new StringBuilder(text.length());
        int done = 0;
        for (Range range : remover.ours) {
            stripped.append(text, done, range.from);
            done = range.to;
        }
        return stripped.append(text, done, text.length()).toString();
    }

    /** Returns how many elements of ours a text has; of a part of ours one. */
    static int count(String text) throws DiagnosedException {
        if (!text.contains(MarkNames.PREFIX)) {
            return 0;
        }
        MarkRemover remover = new MarkRemover();
        XmlWalk.over(text, remover);
        return remover.ours.size() - remover.listed;
    }

    @Override
    public void start(XmlElement element) {
        if (outermost == null && MarkNames.isOurs(element)) {
            outermost = element;
        }
    }

    @Override
    public void end(XmlElement element) {
        if (element.equals(outermost)) {
            ours.add(new Range(element.spaceStart(), element.end()));
            listed += element.is("score-part") ? 1 : 0;
            outermost = null;
        }
    }
}
