package org.bellowscribe.musicxml.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A second, simple-minded way to find the order of play, for comparison: it looks at the raw text and walks through it
 * step by step like a player with a finger on the page. It knows well-formed repeats and endings only.
 */
final class PlainPlayer {

    private static final Pattern MEASURE =
            Pattern.compile("<measure\\b[^>]*/>|<measure\\b.*?</measure>", Pattern.DOTALL);
    private static final Pattern ENDING = Pattern.compile("<ending number=\"([^\"]*)\" type=\"start\"");

    private final List<String> measures = new ArrayList<>();
    private final List<Integer> played = new ArrayList<>();
    private int start;
    private int pass = 1;

    private PlainPlayer(String text) {
        String part = text.substring(text.indexOf("<part "), text.indexOf("</part>"));
        Matcher matcher = MEASURE.matcher(part);
        while (matcher.find()) {
            measures.add(matcher.group());
        }
    }

    /** Returns 0-based indices of the measures of the first part in the order of play. */
    static List<Integer> play(String text) {
        PlainPlayer player = new PlainPlayer(text);
        int at = 0;
        while (at < player.measures.size()) {
            at = player.step(at);
        }
        return player.played;
    }

    private int step(int at) {
        if (has(at, "direction=\"forward\"") && start != at) {
            start = at;
            pass = 1;
        }
        if (startsEnding(at) && !numbers(at).contains(pass)) {
            return afterEnding(at);
        }
        played.add(at);
        boolean back = has(at, "direction=\"backward\"");
        if (!back && !stopsEnding(at)) {
            return at + 1;
        }
        if (back && pass < passes(at)) {
            pass++;
            return start;
        }
        start = at + 1;
        pass = 1;
        return at + 1;
    }

    /** How often the section that ends here sounds: twice, or once for each number of its endings. */
    private int passes(int at) {
        Set<Integer> all = new HashSet<>();
        for (int i = start; i <= at; i++) {
            if (startsEnding(i)) {
                all.addAll(numbers(i));
            }
        }
        int next = at + 1;
        while (!all.isEmpty() && next < measures.size() && startsEnding(next)) {
            all.addAll(numbers(next));
            next = afterEnding(next);
        }
        return Math.max(2, all.size());
    }

    private int afterEnding(int at) {
        int i = at;
        while (i < measures.size() - 1 && !stopsEnding(i) && !startsEnding(i + 1)) {
            i++;
        }
        return i + 1;
    }

    private boolean stopsEnding(int at) {
        return measures.get(at).matches("(?s).*<ending[^>]*type=\"(stop|discontinue)\".*");
    }

    private boolean startsEnding(int at) {
        return ENDING.matcher(measures.get(at)).find();
    }

    private Set<Integer> numbers(int at) {
        Set<Integer> numbers = new HashSet<>();
        Matcher matcher = ENDING.matcher(measures.get(at));
        if (matcher.find()) {
            for (String number : matcher.group(1).split(", *")) {
                numbers.add(Integer.valueOf(number));
            }
        }
        return numbers;
    }

    private boolean has(int at, String words) {
        return measures.get(at).contains(words);
    }
}
