package org.bellowscribe.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Makes odd music of a tune: takes some measures of it, puts in what scores may hold where it stands badly (repeats, jumps,
 * ties, tuplets, chord symbols, changes of time), moves notes and durations to their extremes, and now and then writes the
 * same in another encoding. What it makes is nearly always XML, and often valid.
 */
final class TuneMutator {

    private static final Pattern MEASURE = Pattern.compile("(?s)<measure\\b[^>]*>.*?</measure>");
    private static final Pattern NOTE = Pattern.compile("(?s)<note\\b[^>]*>.*?</note>");
    private static final Pattern ATTRIBUTES = Pattern.compile("(?s)<attributes>.*?</attributes>");
    private static final Pattern NUMBER = Pattern.compile(
            "(?<=<(?:duration|octave|alter|fifths|beats|beat-type|divisions|voice|staff|per-minute|actual-notes|normal-notes)>)"
                    + "[^<]*");
    private static final Pattern PLAIN_NOTE_END = Pattern.compile("</note>");
    private static final int MOST_MEASURES = 10;

    private final Random random;

    TuneMutator(Random random) {
        this.random = random;
    }

    /** Returns the bytes of an excerpt with one to five things changed. */
    byte[] change(String score) {
        String changed = excerpt(score);
        for (int i = random.nextInt(5); i >= 0; i--) {
            changed = one(changed);
        }
        return encoded(changed);
    }

    private String one(String score) {
        return switch (random.nextInt(10)) {
            case 0, 1 -> replaced(score, NUMBER, any(OddMusic.NUMBERS));
            case 2, 3 -> atNote(score, any(OddMusic.IN_MEASURE), true);
            case 4 -> atNote(score, any(OddMusic.IN_MEASURE), false);
            case 5, 6 -> beforeEnd(score, any(OddMusic.IN_NOTE));
            case 7 -> inserted(score, Pattern.compile("(?<=<measure\\b[^>]{0,60}>)"), any(OddMusic.AT_BAR));
            case 8 -> swapped(score);
            default -> other(score);
        };
    }

    private String other(String score) {
        return switch (random.nextInt(6)) {
            case 0 -> replaced(score, NOTE, "");
            case 1 -> doubled(score, MEASURE);
            case 2 -> doubled(score, NOTE);
            case 3 -> replaced(score, ATTRIBUTES, "");
            case 4 -> score.replaceAll("number=\"\\d+\"", "number=\"" + any(OddMusic.NUMBERS) + "\"");
            default -> score.replace("</part>", "</part><part id=\"P9\"><measure number=\"1\"/></part>");
        };
    }

    private String any(List<String> texts) {
        return texts.get(random.nextInt(texts.size()));
    }

    /** Returns the score with a run of measures in each part, the first of them always. */
    private String excerpt(String score) {
        int from = 1 + random.nextInt(8);
        int count = random.nextInt(MOST_MEASURES);
        StringBuilder kept = new StringBuilder();
        int last = 0;
        int measure = 0;
        Matcher matcher = Pattern.compile(MEASURE.pattern() + "|<part\\b").matcher(score);
        while (matcher.find()) {
            measure = matcher.group().startsWith("<part") ? -1 : measure + 1;
            boolean keeps = measure <= 0 || (measure >= from && measure < from + count);
            kept.append(score, last, keeps ? matcher.end() : matcher.start());
            last = matcher.end();
        }
        return kept + score.substring(last);
    }

    private String atNote(String score, String odd, boolean before) {
        List<int[]> notes = places(score, NOTE);
        if (notes.isEmpty()) {
            return score;
        }
        int at = notes.get(random.nextInt(notes.size()))[before ? 0 : 1];
        return score.substring(0, at) + odd + score.substring(at);
    }

    private String beforeEnd(String score, String odd) {
        return inserted(score, Pattern.compile("(?=" + PLAIN_NOTE_END.pattern() + ")"), odd);
    }

    private String inserted(String score, Pattern place, String odd) {
        List<int[]> places = places(score, place);
        if (places.isEmpty()) {
            return score;
        }
        int at = places.get(random.nextInt(places.size()))[0];
        return score.substring(0, at) + odd + score.substring(at);
    }

    private String replaced(String score, Pattern what, String by) {
        List<int[]> places = places(score, what);
        if (places.isEmpty()) {
            return score;
        }
        int[] place = places.get(random.nextInt(places.size()));
        return score.substring(0, place[0]) + by + score.substring(place[1]);
    }

    private String doubled(String score, Pattern what) {
        List<int[]> places = places(score, what);
        if (places.isEmpty()) {
            return score;
        }
        int[] place = places.get(random.nextInt(places.size()));
        return score.substring(0, place[1]) + score.substring(place[0]);
    }

    /** Returns the score with the notes of a tune in another order. */
    private String swapped(String score) {
        List<int[]> places = places(score, NOTE);
        if (places.size() < 2) {
            return score;
        }
        int first = random.nextInt(places.size() - 1);
        int[] a = places.get(first);
        int[] b = places.get(first + 1 + random.nextInt(places.size() - first - 1));
        return score.substring(0, a[0])
                + score.substring(b[0], b[1])
                + score.substring(a[1], b[0])
                + score.substring(a[0], a[1])
                + score.substring(b[1]);
    }

    private static List<int[]> places(String score, Pattern what) {
        List<int[]> places = new ArrayList<>();
        Matcher matcher = what.matcher(score);
        while (matcher.find()) {
            places.add(new int[] {matcher.start(), matcher.end()});
        }
        return places;
    }

    private byte[] encoded(String score) {
        return switch (random.nextInt(20)) {
            case 0 -> score.replace("encoding=\"UTF-8\"", "encoding=\"UTF-16\"").getBytes(StandardCharsets.UTF_16);
            case 1 -> score.lines().collect(Collectors.joining("\r\n")).getBytes(StandardCharsets.UTF_8);
            case 2 -> score.lines().collect(Collectors.joining()).getBytes(StandardCharsets.UTF_8);
            case 3 -> ("\uFEFF" + score).getBytes(StandardCharsets.UTF_8);
            default -> score.getBytes(StandardCharsets.UTF_8);
        };
    }
}
