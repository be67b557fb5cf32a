package org.bellowscribe.musicxml.read;

import jakarta.xml.bind.JAXBElement;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.audiveris.proxymusic.Credit;
import org.audiveris.proxymusic.FormattedText;
import org.audiveris.proxymusic.ScorePartwise;
import org.jspecify.annotations.Nullable;

/** The title and other words at the head of the score. */
final class TitleReader {

    private static final Pattern PLACEHOLDER = Pattern.compile(
            "title|untitled( score)?|unnamed|no title|score|music|unbenannt|titel|sans titre|titre|titolo|t\u00edtulo",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private TitleReader() {}

    /** Returns the title of the work, else of the movement, else the first credit; null if the score has none. */
    static @Nullable String title(ScorePartwise score) {
        for (String words : heads(score)) {
            if (!PLACEHOLDER.matcher(words).matches()) {
                return words;
            }
        }
        return null;
    }

    /** Returns every title and credit, joined by line ends. */
    static String headWords(ScorePartwise score) {
        return String.join("\n", heads(score));
    }

    private static List<String> heads(ScorePartwise score) {
        List<String> heads = new ArrayList<>();
        if (score.getWork() != null) {
            add(heads, score.getWork().getWorkTitle());
        }
        add(heads, score.getMovementTitle());
        for (Credit credit : score.getCredit()) {
            for (JAXBElement<?> each : credit.getCreditTypeOrLinkOrBookmark()) {
                if (each.getValue() instanceof FormattedText text) {
                    add(heads, text.getValue());
                }
            }
        }
        return heads;
    }

    private static void add(List<String> heads, @Nullable String words) {
        String plain =
                words == null ? "" : words.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
        if (!plain.isEmpty()) {
            heads.add(plain);
        }
    }
}
