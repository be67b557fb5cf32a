package org.bellowscribe.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.ScoreKind;
import org.jspecify.annotations.Nullable;

/**
 * Finds the files that the user's inputs name, and where each result goes: below the folder for results, a file under
 * its own name, a file of a folder with the sub-folders between. No result takes the place of another or of an input.
 */
public final class Sources {

    /** In place of a number of other ways to play: none are written, and a folder's own are files like all others. */
    public static final int ALL_THERE_ARE = -1;

    private static final String OTHER_NAME =
            "Maybe give it another name, or set the characters of the terminal to UTF-8 (LC_ALL=C.UTF-8).";

    private final @Nullable Path folder;
    private final List<String> beside;
    private final int alternatives;
    /** By its real path each file once, with its place below the folder for results. */
    private final Map<Path, Source> inputs = new LinkedHashMap<>();

    private final Set<Path> pins = new LinkedHashSet<>();
    private final List<Source> found = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    /**
     * An input that gives nothing to work on.
     *
     * @param input the input as the user wrote it, or the file
     * @param diagnostic why
     */
    public record Problem(String input, Diagnostic diagnostic) {}

    private Sources(@Nullable Path folder, List<String> beside, int alternatives) {
        this.folder = folder;
        this.beside = beside;
        this.alternatives = alternatives;
    }

    /**
     * Finds the files.
     *
     * @param inputs files and folders as the user wrote them
     * @param folder where results go; null to put each in place of its file
     * @param records true if records are written beside the results
     */
    public static Sources find(List<String> inputs, @Nullable Path folder, boolean records) {
        return find(inputs, folder, records ? List.of(Source.RECORD) : List.of(), 0);
    }

    /**
     * Finds the files.
     *
     * @param inputs files and folders as the user wrote them
     * @param folder where results go; null to put each in place of its file
     * @param beside how the names of the files end that are written beside each result
     * @param alternatives how many other ways to play a tune may be written beside each result, or {@link #ALL_THERE_ARE}
     */
    public static Sources find(List<String> inputs, @Nullable Path folder, List<String> beside, int alternatives) {
        Sources sources = new Sources(folder, List.copyOf(beside), alternatives);
        inputs.forEach(sources::add);
        sources.giveTargets();
        return sources;
    }

    /** Returns the one source that stands for standard input and output. */
    public static Sources piped(InputStream in, PrintStream out) {
        Sources sources = new Sources(null, List.of(), 0);
        sources.found.add(Source.piped(in, out));
        return sources;
    }

    /** Tells whether an input is a book file; false if it cannot be read. */
    public static boolean isBook(String input) {
        try {
            Path file = Path.of(input);
            return Files.isRegularFile(file) && ScoreFolder.kind(file) == ScoreKind.BOOK;
        } catch (InvalidPathException | IOException e) {
            return false;
        }
    }

    private void add(String input) {
        try {
            Path path = Path.of(input);
            if (!Files.exists(path)) {
                problem(input, DiagnosticCode.UNREADABLE, "There is no such file or folder.");
            } else if (Files.isDirectory(path)) {
                addFolder(input, path);
            } else if (!Files.isRegularFile(path)) {
                problems.add(new Problem(input, Source.noFile()));
            } else {
                add(path, path.getFileName());
            }
        } catch (InvalidPathException e) {
            problem(input, DiagnosticCode.UNREADABLE, "No file can have this name here.", OTHER_NAME);
        }
    }

    private void addFolder(String input, Path path) {
        ScoreFolder below = ScoreFolder.of(path, folder);
        below.unreadable()
                .forEach((file, e) -> problem(
                        file.toString(),
                        DiagnosticCode.UNREADABLE,
                        "It cannot be read (%s).".formatted(Obstacle.of(e)),
                        "Maybe see to its permissions."));
        if (below.scores().isEmpty() && below.unreadable().isEmpty()) {
            problem(input, DiagnosticCode.UNREADABLE, "The folder holds no score (.musicxml, .xml or .mxl).");
        }
        below.scores().forEach(file -> add(file, path.relativize(file)));
        if (alternatives == ALL_THERE_ARE) {
            below.otherWays().forEach(file -> add(file, path.relativize(file)));
        }
        pins.addAll(below.pins());
    }

    private void add(Path file, Path relative) {
        if (!isText(file)) {
            problem(
                    file.toString(),
                    DiagnosticCode.UNREADABLE,
                    "Its name is no text in the characters of this computer.",
                    OTHER_NAME);
            return;
        }
        Path target = folder == null ? file : folder.resolve(relative);
        inputs.putIfAbsent(real(file), new Source(file, file.toString(), target));
    }

    // The names of a record or of another way to play are made of it.
    private static boolean isText(Path file) {
        try {
            return Path.of(file.toString()).equals(file);
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private void giveTargets() {
        Map<String, String> taken = new HashMap<>();
        inputs.forEach((real, given) -> {
            boolean clear = beside.stream().noneMatch(ending -> taken.containsKey(key(given.beside(ending))));
            Source source = clear ? given : given.byWholeName();
            List<Path> targets = targets(source);
            for (Path target : targets) {
                if (!isFree(real, source, target, taken)) {
                    return;
                }
            }
            targets.forEach(target -> taken.put(key(target), source.shown()));
            found.add(source);
        });
        found.replaceAll(source -> source.with(OtherWays.besideResultOf(
                source, way -> isResultOf(taken.get(key(way)), source) && !inputs.containsKey(real(way)))));
    }

    private static boolean isResultOf(@Nullable String taker, Source source) {
        return taker == null || taker.equals(source.shown());
    }

    private List<Path> targets(Source source) {
        List<Path> targets = new ArrayList<>(List.of(source.target()));
        beside.forEach(ending -> targets.add(source.beside(ending)));
        for (int way = 1; way <= alternatives; way++) {
            targets.add(source.alternativeTarget(way + 1));
        }
        return targets;
    }

    private boolean isFree(Path real, Source source, Path target, Map<String, String> taken) {
        Source input = inputs.get(real(target));
        if (input != null && !(folder == null && real.equals(real(target)))) {
            problem(
                    source.shown(),
                    DiagnosticCode.UNWRITABLE,
                    "The result would take the place of the input %s.".formatted(input.shown()),
                    "Maybe name another folder with --out, or ask for --in-place.");
            return false;
        }
        String other = taken.get(key(target));
        if (other != null) {
            problem(
                    source.shown(),
                    DiagnosticCode.UNWRITABLE,
                    "The result would take the place of that of %s: %s.".formatted(other, target),
                    "Maybe work on the two in turn, each into a folder of its own.");
            return false;
        }
        return true;
    }

    // On many computers names that differ in capitals only are one file.
    private static String key(Path target) {
        return target.toAbsolutePath().normalize().toString().toLowerCase(Locale.ROOT);
    }

    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            return path.toAbsolutePath().normalize();
        }
    }

    private void problem(String input, DiagnosticCode code, String text, String... advice) {
        problems.add(new Problem(input, Diagnostic.error(code, Place.FILE, text, advice)));
    }

    /** Returns the files in the order of the inputs, those of a folder by name. */
    public List<Source> found() {
        return List.copyOf(found);
    }

    /** Returns what is to be said of files of pins in folders that belong to no score. */
    public List<Problem> strayPins() {
        Set<Path> used = new HashSet<>();
        inputs.values().forEach(source -> used.add(real(source.file().resolveSibling(source.stem() + Source.PINS))));
        return pins.stream()
                .filter(file -> !used.contains(real(file)))
                .map(file -> StrayPins.remark(file, inputs.values()))
                .toList();
    }

    /** Returns the inputs that gave nothing. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }
}
