package org.bellowscribe.batch.ledger;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/**
 * What is remembered of a tune.
 *
 * @param place where its result goes below the folder, with slashes
 * @param keys what it was made from
 * @param files what was written for it
 * @param result what was told of it, in a form that only the writer knows
 */
public record Entry(String place, Keys keys, List<File> files, String result) {

    private static final String FORM = "1";
    private static final String BETWEEN = "\t";

    /**
     * A file that was written.
     *
     * @param place where it is below the folder, with slashes
     * @param hash the hash of its content
     */
    public record File(String place, String hash) {}

    /** Copies the list. */
    public Entry {
        files = List.copyOf(files);
    }

    /** Returns the entry as a line, without the end of the line. */
    String line() {
        List<String> fields = new ArrayList<>();
        fields.add(place);
        fields.addAll(keys.fields());
        fields.add(String.valueOf(files.size()));
        for (File file : files) {
            fields.add(file.place());
            fields.add(file.hash());
        }
        fields.add(result);
        String content = String.join(BETWEEN, fields.stream().map(Entry::escape).toList());
        return FORM + BETWEEN + sum(content) + BETWEEN + content;
    }

    /** Reads a line; null if it is no whole entry of this form, such as the last line of a run that was killed. */
    static @Nullable Entry of(String line) {
        String[] parts = line.split(BETWEEN, 3);
        if (parts.length < 3 || !parts[0].equals(FORM) || !parts[1].equals(sum(parts[2]))) {
            return null;
        }
        List<String> fields = List.of(parts[2].split(BETWEEN, -1));
        Iterator<String> rest = fields.stream().map(Entry::unescape).iterator();
        try {
            String place = rest.next();
            List<String> keys = new ArrayList<>();
            for (int i = 0; i < Keys.COUNT; i++) {
                keys.add(rest.next());
            }
            List<File> files = new ArrayList<>();
            for (int count = Integer.parseInt(rest.next()); count > 0; count--) {
                files.add(new File(rest.next(), rest.next()));
            }
            return new Entry(place, Keys.of(keys), files, rest.next());
        } catch (NoSuchElementException | NumberFormatException e) {
            return null;
        }
    }

    private static String sum(String content) {
        CRC32 sum = new CRC32();
        sum.update(content.getBytes(StandardCharsets.UTF_8));
        return "%08x".formatted(sum.getValue());
    }

    private static String escape(String field) {
        return field.replace("\\", "\\\\")
                .replace("\t", "\\t")
                .replace("\n", "\\n")
                .replace("\r", "\\r");
    }

    private static String unescape(String field) {
        if (field.indexOf('\\') < 0) {
            return field;
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < field.length(); i++) {
            char letter = field.charAt(i);
            if (letter == '\\' && i + 1 < field.length()) {
                char escaped = field.charAt(++i);
                text.append(escaped == 't' ? '\t' : escaped == 'n' ? '\n' : escaped == 'r' ? '\r' : escaped);
            } else {
                text.append(letter);
            }
        }
        return text.toString();
    }
}
