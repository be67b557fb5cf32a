package org.bellowscribe.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.ScoreKind;
import org.jspecify.annotations.Nullable;

/**
 * Finds the files that the user's inputs name, and where each result goes: below the folder for results, a file under
 * its own name, a file of a folder with the sub-folders between, one of a list with all folders that it names. No result
 * takes the place of another or of an input.
 */
public final class Sources {

    private final @Nullable Path folder;
    private final Wanted wanted;
    private final Inputs inputs;
    private final List<Source> found = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    /** Whether a folder below that for results is a link. */
    private final Map<Path, Boolean> links = new HashMap<>();

    /**
     * An input that gives nothing to work on.
     *
     * @param input the input as the user wrote it, or the file
     * @param diagnostic why
     */
    public record Problem(String input, Diagnostic diagnostic) {}

    private Sources(@Nullable Path folder, Wanted wanted, Inputs inputs) {
        this.folder = folder;
        this.wanted = wanted;
        this.inputs = inputs;
        problems.addAll(inputs.problems());
    }

    /**
     * Finds the files.
     *
     * @param inputs files and folders as the user wrote them
     * @param folder where results go; null to put each in place of its file
     * @param records true if records are written beside the results
     */
    public static Sources find(List<String> inputs, @Nullable Path folder, boolean records) {
        List<String> beside = records ? List.of(Source.RECORD) : List.of();
        return find(Wanted.all(inputs, new Wanted.Beside(beside, 0)), folder);
    }

    /**
     * Finds the files.
     *
     * @param folder where results go; null to put each in place of its file
     */
    public static Sources find(Wanted wanted, @Nullable Path folder) {
        return find(wanted, folder, false);
    }

    /** Finds the files to take marks out of: other ways to play a tune are files like all others. */
    public static Sources findAll(Wanted wanted, @Nullable Path folder) {
        return find(wanted, folder, true);
    }

    private static Sources find(Wanted wanted, @Nullable Path folder, boolean otherWays) {
        Sources sources = new Sources(folder, wanted, Inputs.find(wanted, folder, otherWays));
        sources.giveTargets();
        return sources;
    }

    /** Returns the one source that stands for standard input and output. */
    public static Sources piped(InputStream in, PrintStream out) {
        Sources sources = find(List.of(), null, false);
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

    private void giveTargets() {
        Map<String, String> taken = new HashMap<>();
        inputs.files().forEach((real, given) -> {
            Wanted.Beside beside = wanted.beside().apply(given.file());
            boolean clear = beside.endings().stream().noneMatch(ending -> taken.containsKey(key(given.beside(ending))));
            Source source = clear ? given : given.byWholeName();
            List<Path> targets = source.targets(beside);
            for (Path target : targets) {
                if (!isFree(real, source, target, taken)) {
                    return;
                }
            }
            targets.forEach(target -> taken.put(key(target), source.shown()));
            if (isInShare(source)) {
                found.add(source);
            }
        });
        found.replaceAll(source -> source.with(OtherWays.besideResultOf(
                source,
                way -> inputs.paths().stands(way)
                        && isResultOf(taken.get(key(way)), source)
                        && inputs.at(way) == null)));
    }

    private boolean isInShare(Source source) {
        Path place = folder == null ? source.file().getFileName() : folder.relativize(source.target());
        return wanted.selection().share().holds(Selection.withSlashes(place));
    }

    private static boolean isResultOf(@Nullable String taker, Source source) {
        return taker == null || taker.equals(source.shown());
    }

    private boolean isFree(Path real, Source source, Path target, Map<String, String> taken) {
        Source input = inputs.at(target);
        if (input != null && !(folder == null && real.equals(RealPaths.of(target)))) {
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
        Path link = linkAbove(target);
        if (link != null) {
            problem(
                    source.shown(),
                    DiagnosticCode.UNWRITABLE,
                    "The result would go through %s, which is a link, and links below the folder for results are not followed."
                            .formatted(link),
                    "Maybe put a folder in its place, or name the one behind it with --out.");
            return false;
        }
        return true;
    }

    /** Returns the first folder below that for results, on the way to a place, that is a link; null if there is none. */
    private @Nullable Path linkAbove(Path target) {
        if (folder == null) {
            return null;
        }
        Path way = folder;
        for (Path name : folder.relativize(target)) {
            way = way.resolve(name);
            if (!way.equals(target) && links.computeIfAbsent(way, Files::isSymbolicLink)) {
                return way;
            }
        }
        return null;
    }

    // On many computers names that differ in capitals only are one file.
    private static String key(Path target) {
        return target.toAbsolutePath().normalize().toString().toLowerCase(Locale.ROOT);
    }

    private void problem(String input, DiagnosticCode code, String text, String... advice) {
        problems.add(new Problem(input, Diagnostic.error(code, Place.FILE, text, advice)));
    }

    /** Returns the files in the order of the inputs, those of a folder by name. */
    public List<Source> found() {
        return List.copyOf(found);
    }

    /** Removes temporary files beside the results that a run has left there that was killed. */
    public void removeLeftovers(Instant now) {
        Set<Path> folders = new HashSet<>();
        found.stream()
                .filter(source -> !source.isPiped())
                .forEach(source -> folders.add(source.target().toAbsolutePath().getParent()));
        folders.forEach(each -> AtomicFile.removeLeftovers(each, now));
    }

    /** Returns some of the files, without what is wrong with the inputs. */
    public Sources only(Set<Path> files) {
        Sources some = new Sources(folder, wanted, inputs);
        some.problems.clear();
        found.stream().filter(source -> files.contains(source.file())).forEach(some.found::add);
        return some;
    }

    /** Returns what is to be said of files of pins in folders that belong to no score. */
    public List<Problem> strayPins() {
        if (inputs.pins().isEmpty()) {
            return List.of();
        }
        Set<Path> used = new HashSet<>();
        Collection<Source> all = inputs.files().values();
        all.forEach(source -> used.add(RealPaths.of(source.file().resolveSibling(source.stem() + Source.PINS))));
        return inputs.pins().stream()
                .filter(file -> !used.contains(RealPaths.of(file)))
                .map(file -> StrayPins.remark(file, all))
                .toList();
    }

    /** Returns the inputs that gave nothing. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }
}
