package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.PatternSyntaxException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** The files that the words of a line name: scores, folders, patterns, and lists of scores and folders. */
final class Inputs {

    private static final Path HERE = Path.of("");
    private static final String OTHER_NAME =
            "Maybe give it another name, or set the characters of the terminal to UTF-8 (LC_ALL=C.UTF-8).";

    private final Wanted wanted;
    private final @Nullable Path results;
    private final boolean otherWays;
    private final Map<Path, Source> files = new LinkedHashMap<>();
    private final RealPaths paths = new RealPaths();
    /** The folders in which they really are. */
    private final Set<Path> folders = new HashSet<>();

    private final Set<Path> pins = new LinkedHashSet<>();
    private final List<Sources.Problem> problems = new ArrayList<>();

    private Inputs(Wanted wanted, @Nullable Path results, boolean otherWays) {
        this.wanted = wanted;
        this.results = results;
        this.otherWays = otherWays;
    }

    /**
     * Finds them.
     *
     * @param results the folder for results; null to put each in place of its file
     * @param otherWays true if other ways to play a tune in a folder are files like all others
     */
    static Inputs find(Wanted wanted, @Nullable Path results, boolean otherWays) {
        Inputs inputs = new Inputs(wanted, results, otherWays);
        wanted.inputs().forEach(inputs::add);
        return inputs;
    }

    /** Returns each file once, in the order of the words, by its real path, with its place below the folder for results. */
    Map<Path, Source> files() {
        return Collections.unmodifiableMap(files);
    }

    /** Returns the files of pins that lie in the folders. */
    Set<Path> pins() {
        return Collections.unmodifiableSet(pins);
    }

    /** Returns the words that gave nothing. */
    List<Sources.Problem> problems() {
        return List.copyOf(problems);
    }

    /** Returns what files are really called. */
    RealPaths paths() {
        return paths;
    }

    /** Returns the file that stands in a place; null if none of them does. */
    @Nullable
    Source at(Path place) {
        Path folder = place.toAbsolutePath().getParent();
        return folder != null && folders.contains(paths.folderOf(folder)) ? files.get(RealPaths.of(place)) : null;
    }

    private void add(String input) {
        try {
            boolean there = exists(input);
            if (!there && input.startsWith(InputList.SIGN)) {
                addListed(input);
            } else if (!there && PathPattern.isOne(input)) {
                addMatching(input);
            } else if (Files.isDirectory(Path.of(input))) {
                addFolder(Path.of(input), HERE);
            } else {
                addFile(input, Path.of(input).getFileName());
            }
        } catch (InvalidPathException e) {
            problem(input, "No file can have this name here.", OTHER_NAME);
        }
    }

    private static boolean exists(String input) {
        try {
            return Files.exists(Path.of(input));
        } catch (InvalidPathException e) {
            // Where no name can have the signs of a pattern, it is one.
            return false;
        }
    }

    private void addFile(String input, Path place) {
        Path path = Path.of(input);
        if (!Files.exists(path)) {
            problem(input, "There is no such file or folder.", Missing.advice(path));
        } else if (!Files.isRegularFile(path)) {
            problems.add(new Sources.Problem(input, Source.noFile()));
        } else {
            put(path, place, RealPaths.of(path));
        }
    }

    private void addListed(String input) {
        try {
            List<String> entries = InputList.read(input, wanted.standardInput());
            if (entries.isEmpty()) {
                problem(input, "The list names no score.", InputList.advice(input));
            }
            for (String entry : entries) {
                Path path = Path.of(entry);
                if (Files.isDirectory(path)) {
                    addFolder(path, InputList.place(path));
                } else {
                    addFile(entry, InputList.place(path));
                }
            }
        } catch (IOException e) {
            problem(
                    input,
                    "The list of inputs cannot be read (%s).".formatted(Obstacle.of(e)),
                    "Behind @ stands the file that names them, one a line; a score of that name is ./" + input + ".");
        }
    }

    private void addMatching(String input) {
        String above = PathPattern.folderOf(input);
        Path path = Path.of(above);
        try {
            PathPattern pattern = PathPattern.ofPaths(input.substring(above.length()));
            boolean isFolder = Files.isDirectory(path);
            if (!isFolder || addScores(ScoreFolder.of(path, results), path, HERE, pattern::matches) == 0) {
                problem(input, "No score matches this pattern.", Missing.patternAdvice(input));
            }
        } catch (PatternSyntaxException e) {
            problem(input, "This is no pattern of file names (%s).".formatted(e.getDescription()));
        }
    }

    private void addFolder(Path path, Path place) {
        ScoreFolder below = ScoreFolder.of(path, results);
        int admitted = addScores(below, path, place, relative -> true);
        if (below.scores().isEmpty() && below.unreadable().isEmpty()) {
            problem(path.toString(), "The folder holds no score (.musicxml, .xml or .mxl).");
        } else if (admitted == 0 && below.unreadable().isEmpty()) {
            problem(path.toString(), "Of the scores in the folder --include and --exclude leave none.");
        }
    }

    private int addScores(ScoreFolder below, Path path, Path place, Predicate<Path> admits) {
        below.unreadable()
                .forEach((file, e) -> problem(
                        file.toString(),
                        "It cannot be read (%s).".formatted(Obstacle.of(e)),
                        "Maybe see to its permissions."));
        List<Path> scores = new ArrayList<>(below.scores());
        scores.addAll(otherWays ? below.otherWays() : List.of());
        int admitted = 0;
        for (Path file : scores) {
            Path relative = path.relativize(file);
            if (admits.test(relative) && wanted.selection().admits(relative)) {
                put(file, place.resolve(relative), paths.ofFound(file));
                admitted++;
            }
        }
        pins.addAll(below.pins());
        return admitted;
    }

    private void put(Path file, Path place, Path real) {
        if (!isText(file)) {
            problem(file.toString(), "Its name is no text in the characters of this computer.", OTHER_NAME);
            return;
        }
        Path target = results == null ? file : results.resolve(place.toString());
        folders.add(real.getParent());
        files.putIfAbsent(real, new Source(file, file.toString(), target));
    }

    // The names of a record or of another way to play are made of it.
    private static boolean isText(Path file) {
        try {
            return Path.of(file.toString()).equals(file);
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private void problem(String input, String text, String... advice) {
        problems.add(new Sources.Problem(input, Diagnostic.error(DiagnosticCode.UNREADABLE, Place.FILE, text, advice)));
    }
}
