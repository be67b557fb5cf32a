package org.bellowscribe.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.PatternSyntaxException;
import org.bellowscribe.batch.PathPattern;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionFile;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.diagnostic.Obstacle;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/**
 * Options for all scores in a folder and below it, in the form of {@code schemas/settings.xsd}.
 *
 * @param path where it is
 * @param isRoot true if nothing above it counts
 * @param options values of options by their names, as on a command line; of one without a value {@code yes} or {@code no}
 * @param tunes what holds for some tunes only, later ones before earlier ones
 */
record SettingsFile(Path path, boolean isRoot, Map<String, String> options, List<Exceptions> tunes) {

    /** What it is called. */
    static final String NAME = "bellowscribe.xml";

    static final String YES = "yes";
    static final String NO = "no";
    private static final String ROOT = "root";
    private static final String FILE = "file";

    /**
     * What holds for some tunes only.
     *
     * @param file their paths below the folder, or their names, as it is written
     * @param pattern the same
     * @param options values of options by their names
     * @param place where it stands in the file
     */
    record Exceptions(String file, PathPattern pattern, Map<String, String> options, Place place) {}

    /**
     * Reads a file.
     *
     * @param known the options that may stand in it
     * @throws UsageException if it is wrong; says where
     */
    static SettingsFile read(Path path, List<CommandOption<?>> known) throws UsageException {
        try (InputStream stream = DefinitionFile.open(path)) {
            return new Reader(path, known)
                    .read(DefinitionSchema.of("settings.xsd").read(stream));
        } catch (DiagnosedException e) {
            throw wrong(path, e.diagnostics());
        } catch (IOException e) {
            throw new UsageException("%s: The settings cannot be read (%s).".formatted(path, Obstacle.of(e)));
        }
    }

    private static UsageException wrong(Path path, List<Diagnostic> remarks) {
        return new UsageException(String.join(
                "\n",
                remarks.stream().map(remark -> remark.print(path.toString())).toList()));
    }

    /** Returns what holds for a score below the folder and not for all. */
    List<Exceptions> exceptions(Path score) {
        Path relative = below(score);
        return tunes.stream().filter(each -> each.pattern().matches(relative)).toList();
    }

    /** Returns the path of a score below the folder. */
    Path below(Path score) {
        return folder().relativize(score.toAbsolutePath().normalize());
    }

    /** Returns the folder. */
    Path folder() {
        return path.toAbsolutePath().normalize().resolveSibling("");
    }

    /** Reads the elements of one file. */
    private record Reader(Path path, List<CommandOption<?>> known) {

        SettingsFile read(DefinitionElement root) throws DiagnosedException {
            List<Diagnostic> wrong = new ArrayList<>();
            Map<String, String> options = options(root, ROOT, wrong);
            List<Exceptions> tunes = new ArrayList<>();
            for (DefinitionElement tune : root.children("tune")) {
                try {
                    String file = tune.required(FILE);
                    tunes.add(new Exceptions(file, PathPattern.of(file), options(tune, FILE, wrong), tune.place()));
                } catch (PatternSyntaxException e) {
                    wrong.add(error(
                            tune.place(),
                            "The file of <tune> is no pattern of names (%s).".formatted(e.getDescription())));
                }
            }
            if (!wrong.isEmpty()) {
                throw new DiagnosedException(wrong);
            }
            return new SettingsFile(path, root.says(ROOT), options, tunes);
        }

        private Map<String, String> options(DefinitionElement element, String own, List<Diagnostic> wrong) {
            Map<String, String> options = new LinkedHashMap<>();
            element.attributes().forEach((name, value) -> {
                CommandOption<?> option = find(name);
                if (option != null) {
                    if (!option.hasValue() && !value.equals(YES) && !value.equals(NO)) {
                        wrong.add(error(element.place(), "%s takes yes or no, not %s.".formatted(name, value)));
                    }
                    options.put(name, option.reader().fromFolder(folder(), value));
                } else if (!name.equals(own)) {
                    wrong.add(unknown(element.place(), name));
                }
            });
            return options;
        }

        private Path folder() {
            return path.resolveSibling("");
        }

        private @Nullable CommandOption<?> find(String name) {
            return known.stream()
                    .filter(option -> option.name().equals(name))
                    .findFirst()
                    .orElse(null);
        }

        private Diagnostic unknown(Place place, String name) {
            List<String> names = known.stream().map(CommandOption::name).toList();
            List<String> near = NearestNames.of(name, names);
            boolean ofRuns =
                    MarkOptions.all().stream().anyMatch(option -> option.name().equals(name));
            String advice = near.isEmpty()
                    ? "Maybe leave it out: the options that say how to mark a tune can stand here, without the hyphens."
                    : "Maybe %s is meant.".formatted(String.join(" or ", near));
            return ofRuns
                    ? error(
                            place,
                            "The option %s is about a run, not about tunes.".formatted(name),
                            "Give it on the command line.")
                    : error(place, "There is no option %s.".formatted(name), advice);
        }

        private static Diagnostic error(Place place, String text, String... advice) {
            return Diagnostic.error(DiagnosticCode.BAD_DEFINITION, place, text, advice);
        }
    }
}
