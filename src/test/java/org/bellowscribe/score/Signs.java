package org.bellowscribe.score;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Road signs written as a musician would: {@code o} is a measure, {@code |:} and {@code :|} are repeats ({@code :|3}
 * three times), {@code [1,3} starts an ending and {@code ]} stops it; words such as {@code D.C.}, {@code Fine},
 * {@code Segno}, {@code Coda} and {@code ToCoda} stand as in a score: segno and coda before their measure, the others
 * after it.
 */
final class Signs {

    private final List<RoadSigns> signs = new ArrayList<>();
    private RoadSigns next = RoadSigns.NONE;

    private Signs() {}

    /** Returns one entry for each measure of the text. */
    static List<RoadSigns> of(String text) {
        Signs reader = new Signs();
        Stream.of(text.split(" +")).forEach(reader::read);
        return reader.signs;
    }

    /** Returns the order of play of the text in short form. */
    static String order(String text) {
        return PlayOrderFinder.find(of(text)).order().shortForm();
    }

    /** Returns the remarks on the text. */
    static List<String> remarks(String text) {
        return PlayOrderFinder.find(of(text)).remarks().stream()
                .map(RoadRemark::text)
                .toList();
    }

    private void read(String word) {
        switch (word) {
            case "o" -> {
                signs.add(next);
                next = RoadSigns.NONE;
            }
            case "|:" -> next = next.withRepeatStart();
            case "]" -> last(last().withEndingStop());
            case "Segno" -> next = next.withSegno("");
            case "Coda" -> next = next.withCoda("");
            case "ToCoda" -> last(last().withToCoda(""));
            case "Fine" -> last(last().withFine());
            default -> readOther(word);
        }
    }

    private void readOther(String word) {
        if (word.startsWith(":|")) {
            int times = word.length() > 2 ? Integer.parseInt(word.substring(2)) : 2;
            last(last().withRepeatEnd(new RepeatEnd(times, false)));
        } else if (word.startsWith("[")) {
            List<Integer> numbers = Stream.of(word.substring(1).split(","))
                    .filter(each -> !each.isEmpty())
                    .map(Integer::valueOf)
                    .toList();
            next = next.withEndingStart(numbers);
        } else {
            last(RoadWords.read(word.replace('_', ' '), last()));
        }
    }

    private RoadSigns last() {
        return signs.get(signs.size() - 1);
    }

    private void last(RoadSigns changed) {
        signs.set(signs.size() - 1, changed);
    }
}
