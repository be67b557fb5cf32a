package org.bellowscribe.batch;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damages scores at random: deletes, doubles and swaps elements, changes values and bytes, cuts files off. */
final class Mutator {

    private static final Pattern BLOCK = Pattern.compile(
            "(?s)<(note|measure|part|attributes|direction|barline|harmony|backup|forward|pitch|time|key|score-part)\\b"
                    + "[^>]*>.*?</\\1>");
    private static final Pattern LEAF = Pattern.compile("<([a-z-]+)[^<>]*>[^<>]*</\\1>|<[a-z-]+[^<>]*/>");
    private static final Pattern VALUE = Pattern.compile(">([^<>\\s][^<>]*)</|=\"([^\"]*)\"");
    private static final Pattern TAG = Pattern.compile("</?[a-z-]+[^<>]*>");
    private static final List<String> JUNK = List.of(
            "",
            "-1",
            "0",
            "1",
            "x",
            "999999999",
            "0.000001",
            "1e9",
            "NaN",
            "3.5",
            "7",
            "stop",
            "start",
            "yes",
            "backward",
            "forward",
            "1-99",
            "-999",
            "none",
            "D.C. al Fine",
            "Bm",
            "bellowscribe-buttons",
            "&#x1F3B5;",
            "&amp;",
            "&none;",
            "<rest/>");

    private final Random random;

    Mutator(Random random) {
        this.random = random;
    }

    /** Returns a score with one to four things damaged. */
    byte[] damage(byte[] score) {
        byte[] damaged = score;
        boolean text = score[0] == '<';
        for (int i = random.nextInt(4); i >= 0; i--) {
            damaged = text && random.nextInt(20) > 0 ? text(damaged) : bytes(damaged);
        }
        return damaged;
    }

    private byte[] text(byte[] bytes) {
        // One character a byte: whatever the encoding, nothing is lost.
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        String damaged = switch (random.nextInt(8)) {
            case 0 -> replaced(text, BLOCK, "");
            case 1 -> replaced(text, LEAF, "");
            case 2 -> doubled(text, random.nextBoolean() ? BLOCK : LEAF);
            case 3 -> swapped(text, random.nextBoolean() ? BLOCK : LEAF);
            case 4 -> swapped(text, VALUE);
            case 5 -> random.nextInt(9) == 0 ? replaced(text, TAG, "") : replaced(text, VALUE, junk());
            default -> replaced(text, VALUE, junk());
        };
        return damaged.getBytes(StandardCharsets.ISO_8859_1);
    }

    private String junk() {
        return JUNK.get(random.nextInt(JUNK.size()));
    }

    private byte[] bytes(byte[] bytes) {
        if (bytes.length < 4) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        int length = 1 + random.nextInt(Math.min(20, bytes.length - at));
        return switch (random.nextInt(4)) {
            case 0 -> Arrays.copyOf(bytes, at);
            case 1 -> joined(Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, at + length, bytes.length));
            case 2 -> joined(Arrays.copyOf(bytes, at + length), Arrays.copyOfRange(bytes, at, bytes.length));
            default -> {
                byte[] changed = bytes.clone();
                changed[at] = (byte) random.nextInt(256);
                yield changed;
            }
        };
    }

    private static byte[] joined(byte[] first, byte[] second) {
        byte[] all = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }

    private String replaced(String text, Pattern pattern, String by) {
        int[] place = any(text, pattern);
        return text.substring(0, place[0]) + by + text.substring(place[1]);
    }

    private String doubled(String text, Pattern pattern) {
        int[] place = any(text, pattern);
        return text.substring(0, place[1]) + text.substring(place[0]);
    }

    private String swapped(String text, Pattern pattern) {
        int[] a = any(text, pattern);
        int[] b = any(text, pattern);
        if (a[0] > b[0]) {
            int[] c = a;
            a = b;
            b = c;
        }
        return a[1] > b[0]
                ? text
                : text.substring(0, a[0])
                        + text.substring(b[0], b[1])
                        + text.substring(a[1], b[0])
                        + text.substring(a[0], a[1])
                        + text.substring(b[1]);
    }

    /** Returns where one of the places that fit begins and ends; an empty place if there is none. */
    private int[] any(String text, Pattern pattern) {
        List<int[]> places = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            int group = !pattern.equals(VALUE) ? 0 : matcher.group(1) != null ? 1 : 2;
            places.add(new int[] {matcher.start(group), matcher.end(group)});
        }
        return places.isEmpty() ? new int[2] : places.get(random.nextInt(places.size()));
    }
}
