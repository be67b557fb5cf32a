package org.bellowscribe.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A list of inputs: one a line, or with zero bytes between; empty lines and those that begin with # do not count. */
final class InputList {

    /** What stands before the name of a list. */
    static final String SIGN = "@";

    private static final String STANDARD_INPUT = "@-";
    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");
    private static final Pattern ZERO = Pattern.compile("\0");

    private InputList() {}

    /**
     * Reads the list of a word.
     *
     * @param word the sign and the name of a file, or of standard input
     * @param standardInput what stands for standard input
     */
    static List<String> read(String word, InputStream standardInput) throws IOException {
        byte[] bytes = word.equals(STANDARD_INPUT)
                ? standardInput.readAllBytes()
                : Files.readAllBytes(Path.of(word.substring(SIGN.length())));
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        if (text.indexOf('\0') >= 0) {
            return ZERO.splitAsStream(text).filter(name -> !name.isEmpty()).toList();
        }
        Stream<String> lines = LINE_END.splitAsStream(text);
        return lines.filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    }

    /** Returns what to do about a list that names nothing. */
    static String advice(String word) {
        return word.equals(STANDARD_INPUT)
                ? "Maybe the command that writes it has found none."
                : "Write scores and folders into it, one a line; lines that begin with # do not count.";
    }

    /** Returns the path of an entry below the folder for results: the folders that it names, from the top or from here. */
    static Path place(Path entry) {
        Path path = entry.normalize();
        Path root = path.getRoot();
        Path below = root == null ? path : root.relativize(path);
        int up = 0;
        while (up < below.getNameCount() - 1 && below.getName(up).toString().equals("..")) {
            up++;
        }
        return below.subpath(up, below.getNameCount());
    }
}
