package org.bellowscribe.annotation.mark;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.bellowscribe.annotation.style.LeftHandLabels;
import org.bellowscribe.lefthand.Stroke;
import org.bellowscribe.theory.Fraction;

/** Writes a label for each stroke of the left hand that falls within one note, one after the other. */
final class LeftHandText {

    private record Piece(String before, String label) {}

    private final LeftHandLabels signs;
    private final Function<Stroke, String> label;
    private final List<Piece> pieces = new ArrayList<>();
    private Fraction last = Fraction.ZERO;

    /**
     * Creates an empty text.
     *
     * @param signs what stands between labels
     */
    LeftHandText(LeftHandLabels signs, Function<Stroke, String> label) {
        this.signs = signs;
        this.label = label;
    }

    /**
     * Adds what is pressed. What begins later than the note has a separator before it, also the first one.
     *
     * @param time time from the start of the note that carries the text to the stroke
     */
    void add(Fraction time, Stroke stroke) {
        String before = !time.equals(last) ? signs.then() : pieces.isEmpty() ? "" : signs.together();
        pieces.add(new Piece(before, label.apply(stroke)));
        last = time;
    }

    /** Returns the text; empty if nothing is pressed. */
    @Override
    public String toString() {
        return text(pieces.size());
    }

    /**
     * Returns the text, cut to a length if what is left out only goes on with the same labels.
     *
     * @param longest so many characters it shall have at most
     */
    String shortened(int longest) {
        if (text(pieces.size()).length() <= longest) {
            return toString();
        }
        int kept = pieces.size() - 1;
        while (kept > different() && text(kept).length() + signs.andSoOn().length() > longest) {
            kept--;
        }
        String cut = text(kept) + signs.andSoOn();
        return kept >= different() && cut.length() < toString().length() ? cut : toString();
    }

    // How many pieces from the first on hold every label that there is.
    private int different() {
        Set<String> seen = new HashSet<>();
        int needed = 0;
        for (int i = 0; i < pieces.size(); i++) {
            needed = seen.add(pieces.get(i).label()) ? i + 1 : needed;
        }
        return needed;
    }

    private String text(int count) {
        StringBuilder text = new StringBuilder();
        pieces.subList(0, count).forEach(piece -> text.append(piece.before()).append(piece.label()));
        return text.toString();
    }
}
