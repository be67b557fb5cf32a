package org.bellowscribe.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder with a small score and what marking it gives: {@code input.musicxml}; its options in one line of
 * {@code options.txt}, if it has any, where {@code HERE} is the folder; {@code expected.txt}, the exit code and all that
 * is printed; {@code expected.musicxml} and every other file that is written, {@code expected} for {@code input} in the
 * name. The score says in one sentence what it shows.
 *
 * @param folder the folder
 */
record GoldenPair(Path folder) {

    private static final Path ROOT = Path.of("src", "test", "resources", "org", "bellowscribe", "golden");
    private static final Path WORK = Path.of("target", "golden");
    private static final String INPUT = "input";
    private static final String EXPECTED = "expected";
    private static final Pattern DESCRIPTION =
            Pattern.compile("<miscellaneous-field name=\"description\">([^<]*)</miscellaneous-field>");

    /** Returns all pairs by name. */
    static List<GoldenPair> all() throws IOException {
        try (Stream<Path> folders = Files.list(ROOT)) {
            return folders.sorted().map(GoldenPair::new).toList();
        }
    }

    /** Returns the number and the topic, the name of the folder. */
    String name() {
        return folder.getFileName().toString();
    }

    /** Returns what the score says of itself. */
    String description() throws IOException {
        Matcher matcher = DESCRIPTION.matcher(Files.readString(score(), StandardCharsets.UTF_8));
        return matcher.find() ? matcher.group(1) : "";
    }

    /** Returns the score. */
    Path score() {
        return folder.resolve(INPUT + ".musicxml");
    }

    /** Returns a short folder of its own for what a run reads or writes; long paths would be cut off in tables. */
    Path work(String below) {
        return WORK.resolve(name().substring(0, 2)).resolve(below);
    }

    /** Returns the options of the pair. */
    List<String> options() throws IOException {
        Path file = folder.resolve("options.txt");
        return Files.exists(file)
                ? Arrays.asList(Files.readString(file)
                        .strip()
                        .replace("HERE", folder.toString())
                        .split(" "))
                : List.of();
    }

    /** Returns the options but for those that are about one score only. */
    List<String> optionsForMany() throws IOException {
        List<String> options = new ArrayList<>(options());
        int explain = options.indexOf("--explain");
        if (explain >= 0) {
            options.subList(explain, explain + 2).clear();
        }
        return options;
    }

    /** Whether the notes of the result are others, so that it is marked again without moving it once more. */
    boolean moves() throws IOException {
        return options().contains("--transpose") && !options().contains("--keep-notes");
    }

    /** Returns what is expected: the text of each file by its name. */
    Map<String, String> expected() throws IOException {
        return texts(folder, EXPECTED);
    }

    /** Marks the score, and returns the text of each file that is written by the name that is expected. */
    Map<String, String> marked() throws IOException {
        Path in = work("in");
        Path out = work("out");
        for (Path file : List.of(score(), folder.resolve(INPUT + ".pins.xml"))) {
            if (Files.exists(file)) {
                Files.createDirectories(in);
                Files.copy(file, in.resolve(file.getFileName()));
            }
        }
        List<String> words =
                new ArrayList<>(List.of("mark", in.resolve("input.musicxml").toString()));
        words.addAll(List.of("--out", out.toString(), "--threads", "1"));
        words.addAll(options());
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        Map<String, String> marked = texts(out, INPUT);
        marked.put(EXPECTED + ".txt", told(run));
        return marked;
    }

    private String told(CommandRun run) {
        String here = work("in") + System.getProperty("file.separator");
        return "exit code %d%n%nstandard output%n%s%nstandard error%n%s"
                .formatted(run.code(), run.out(), run.err())
                .replace(here, "")
                .replace(work("out") + System.getProperty("file.separator"), "out/")
                .replace(folder + System.getProperty("file.separator"), "")
                .replace(System.lineSeparator(), "\n");
    }

    /** Writes what is expected from now on. */
    void update(Map<String, String> texts) throws IOException {
        for (String old : expected().keySet()) {
            Files.delete(folder.resolve(old));
        }
        for (Map.Entry<String, String> text : texts.entrySet()) {
            Files.writeString(folder.resolve(text.getKey()), text.getValue());
        }
    }

    private static Map<String, String> texts(Path folder, String prefix) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    String name = file.getFileName().toString();
                    if (name.startsWith(prefix + ".")) {
                        texts.put(EXPECTED + name.substring(prefix.length()), Files.readString(file));
                    }
                }
            }
        }
        return texts;
    }
}
