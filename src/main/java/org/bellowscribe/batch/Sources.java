package org.bellowscribe.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.bellowscribe.musicxml.ScoreDocument;
import org.jspecify.annotations.Nullable;

/** Finds the files that the user's inputs name, and where each result goes. */
public final class Sources {

    private static final String SCORE_NAMES = ".*\\.(musicxml|xml|mxl)";

    private final @Nullable Path folder;
    private final List<Source> found = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<Path, String> targets = new HashMap<>();

    /**
     * An input that gives nothing to work on.
     *
     * @param input the input as the user wrote it, or the file
     * @param diagnostic why
     */
    public record Problem(String input, Diagnostic diagnostic) {}

    /**
     * Starts with no files.
     *
     * @param folder where results go, under the names of their files; null to put each in place of its file
     */
    public Sources(@Nullable Path folder) {
        this.folder = folder;
    }

    /** Adds a file, or all scores below a folder by name; what they would write must be new. */
    public void add(String input) {
        Path path = Path.of(input);
        if (!Files.exists(path)) {
            problem(input, DiagnosticCode.UNREADABLE, "There is no such file or folder.");
        } else if (!Files.isDirectory(path)) {
            add(path, path.getFileName());
        } else {
            addFolder(input, path);
        }
    }

    private void addFolder(String input, Path path) {
        try (Stream<Path> below = Files.walk(path)) {
            List<Path> scores = below.filter(file -> Files.isRegularFile(file)
                            && file.getFileName().toString().matches(SCORE_NAMES)
                            && !isOtherXml(file))
                    .sorted()
                    .toList();
            if (scores.isEmpty()) {
                problem(input, DiagnosticCode.UNREADABLE, "The folder holds no .musicxml, .xml or .mxl file.");
            }
            scores.forEach(file -> add(file, path.relativize(file)));
        } catch (IOException | UncheckedIOException e) {
            problem(input, DiagnosticCode.UNREADABLE, "The folder cannot be read (%s).".formatted(e.getMessage()));
        }
    }

    // A folder may hold XML files that are no scores, such as instruments; named by itself such a file is an error.
    private static boolean isOtherXml(Path file) {
        if (!file.getFileName().toString().endsWith(".xml")) {
            return false;
        }
        try {
            ScoreDocument.decode(Files.readAllBytes(file));
            return false;
        } catch (DiagnosedException e) {
            return e.diagnostics().get(0).code() == DiagnosticCode.NOT_MUSICXML;
        } catch (IOException e) {
            return false;
        }
    }

    private void add(Path file, Path relative) {
        Path target = folder == null ? file : folder.resolve(relative);
        String shown = file.toString();
        if (folder != null && isSame(file, target)) {
            problem(
                    shown,
                    DiagnosticCode.UNWRITABLE,
                    "The result would take the place of the input.",
                    "Maybe name another folder with --out, or ask for --in-place.");
            return;
        }
        String other = targets.putIfAbsent(target.toAbsolutePath().normalize(), shown);
        if (other == null) {
            found.add(new Source(file, shown, target));
        } else if (!other.equals(shown)) {
            problem(
                    shown,
                    DiagnosticCode.UNWRITABLE,
                    "The result would take the place of that of %s: %s.".formatted(other, target),
                    "Maybe mark the two in turn, each into a folder of its own.");
        }
    }

    private static boolean isSame(Path a, Path b) {
        try {
            return Files.exists(b) && Files.isSameFile(a, b);
        } catch (IOException e) {
            return false;
        }
    }

    private void problem(String input, DiagnosticCode code, String text, String... advice) {
        problems.add(new Problem(input, Diagnostic.error(code, Place.FILE, text, advice)));
    }

    /** Returns the files in the order in which they were added. */
    public List<Source> found() {
        return List.copyOf(found);
    }

    /** Returns the inputs that gave nothing. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }
}
