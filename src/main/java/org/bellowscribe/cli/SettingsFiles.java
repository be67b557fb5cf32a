package org.bellowscribe.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.UsageException;
import org.jspecify.annotations.Nullable;

/** The settings files beside scores and above them, each read once. */
final class SettingsFiles {

    private final List<CommandOption<?>> known;
    private final Map<Path, Optional<SettingsFile>> byFolder = new HashMap<>();
    private final Map<Path, List<SettingsFile>> chains = new LinkedHashMap<>();
    private final Set<SettingsFile.Exceptions> used = Collections.newSetFromMap(new IdentityHashMap<>());

    /**
     * Creates it.
     *
     * @param known the options that may stand in them
     */
    SettingsFiles(List<CommandOption<?>> known) {
        this.known = List.copyOf(known);
    }

    /**
     * A value and where it comes from.
     *
     * @param text the value, as on a command line
     * @param from the file
     */
    record Value(String text, Path from) {}

    /** Returns what the files say for a score: the nearer file before the farther, within one a tune before all tunes. */
    Map<String, Value> of(Path score) throws UsageException {
        Map<String, Value> values = new LinkedHashMap<>();
        for (SettingsFile file : above(score)) {
            Map<String, String> texts = new LinkedHashMap<>(file.options());
            for (SettingsFile.Exceptions each : file.exceptions(score)) {
                texts.putAll(each.options());
                used.add(each);
            }
            texts.forEach((name, text) -> values.putIfAbsent(name, new Value(text, file.path())));
        }
        return values;
    }

    /** Returns each file that was found with what it says of tunes and holds for none of the scores that were asked about. */
    Map<SettingsFile, List<SettingsFile.Exceptions>> unused() {
        Map<SettingsFile, List<SettingsFile.Exceptions>> unused = new LinkedHashMap<>();
        chains.values().stream().flatMap(List::stream).distinct().forEach(file -> {
            List<SettingsFile.Exceptions> rest =
                    file.tunes().stream().filter(each -> !used.contains(each)).toList();
            unused.put(file, rest);
        });
        return unused;
    }

    private List<SettingsFile> above(Path score) throws UsageException {
        Path own = score.resolveSibling("");
        List<SettingsFile> known = chains.get(own);
        if (known == null) {
            known = find(score);
            chains.put(own, known);
        }
        return known;
    }

    private List<SettingsFile> find(Path score) throws UsageException {
        List<SettingsFile> files = new ArrayList<>();
        Path shown = score.resolveSibling("");
        Path folder = score.toAbsolutePath().normalize().getParent();
        boolean beside = true;
        while (folder != null) {
            // Beside the score it is called as the user calls the score.
            SettingsFile file = read(folder, beside ? shown : folder);
            if (file != null) {
                files.add(file);
            }
            folder = file != null && file.isRoot() ? null : folder.getParent();
            beside = false;
        }
        return files;
    }

    private @Nullable SettingsFile read(Path folder, Path shown) throws UsageException {
        Optional<SettingsFile> found = byFolder.get(folder);
        if (found == null) {
            Path path = shown.resolve(SettingsFile.NAME);
            found = Files.exists(folder.resolve(SettingsFile.NAME))
                    ? Optional.of(SettingsFile.read(path, known))
                    : Optional.empty();
            byFolder.put(folder, found);
        }
        return found.orElse(null);
    }

    /** Returns the files that were found. */
    Set<Path> paths() {
        Set<Path> paths = new TreeSet<>();
        byFolder.values().forEach(file -> file.ifPresent(each -> paths.add(each.path())));
        return paths;
    }
}
