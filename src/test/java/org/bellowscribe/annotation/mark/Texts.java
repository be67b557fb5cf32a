package org.bellowscribe.annotation.mark;

import java.util.List;
import java.util.stream.Collectors;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Arrangement;
import org.bellowscribe.annotation.Mark;

/** Writes marks down as short lines that are easy to compare. */
final class Texts {

    private Texts() {}

    /** Returns the texts of a lyric line, with a space between them. */
    static String line(Annotator annotator, Arrangement arrangement, String line) {
        return annotator.marks(arrangement).stream()
                .filter(mark -> mark instanceof Mark.Syllable syllable
                        && syllable.line().equals(line))
                .map(mark -> ((Mark.Syllable) mark).text())
                .collect(Collectors.joining(" "));
    }

    /** Returns the legend as {@code sign: meaning}. */
    static List<String> legend(Annotator annotator, Arrangement arrangement) {
        return annotator.legend(arrangement).stream()
                .map(entry -> entry.sign() + ": " + entry.meaning())
                .toList();
    }

    /** Returns the words as {@code event: text}. */
    static List<String> words(Annotator annotator, Arrangement arrangement) {
        return annotator.marks(arrangement).stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> mark.event() + ": " + ((Mark.Words) mark).text())
                .toList();
    }
}
