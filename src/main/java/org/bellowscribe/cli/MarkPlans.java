package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.bellowscribe.batch.MarkPlan;
import org.bellowscribe.batch.Outputs;
import org.bellowscribe.batch.Source;
import org.bellowscribe.batch.Sources;
import org.bellowscribe.batch.Wanted;
import org.bellowscribe.batch.ledger.ContentHash;
import org.bellowscribe.batch.ledger.Ledger;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.jspecify.annotations.Nullable;

/** How each tune of a run is marked: as the line says, else as settings files beside and above it say. */
final class MarkPlans {

    private final CommandWords line;
    private final List<CommandOption<?>> options = MarkOptions.ofTunes();
    private final SettingsFiles files = new SettingsFiles(MarkOptions.ofSettings());
    private final Map<Map<String, String>, MarkPlan> plans = new HashMap<>();
    private final Map<Path, MarkPlan> byFile = new LinkedHashMap<>();
    private final Set<Path> definitions = new TreeSet<>();
    private final String tool = ToolVersion.hash();
    /** That of the line alone; null until it is made. */
    private @Nullable MarkPlan usual;

    private @Nullable UsageException wrong;

    /**
     * Creates them.
     *
     * @throws UsageException if the line is wrong by itself
     */
    MarkPlans(CommandWords line) throws UsageException {
        this.line = line;
        usual = plan(line);
    }

    /** Returns how a tune is marked of which no settings file says anything. */
    MarkPlan usual() {
        return Objects.requireNonNull(usual, "usual");
    }

    /** Returns what may be written beside the result of a score; what is wrong with its settings is said later. */
    Wanted.Beside beside(Path file) {
        try {
            MarkPlan plan = byFile.get(file);
            if (plan == null) {
                plan = plan(words(file));
                byFile.put(file, plan);
            }
            return plan.beside();
        } catch (UsageException e) {
            wrong = wrong == null ? e : wrong;
            return Wanted.Beside.NOTHING;
        }
    }

    /** Throws what is wrong with a settings file. */
    void require() throws UsageException {
        if (wrong != null) {
            throw wrong;
        }
    }

    /** Returns how a source is marked. */
    MarkPlan of(Source source) {
        MarkPlan plan = byFile.get(source.file());
        if (plan == null) {
            throw new IllegalStateException("The source (%s) must be one that was found.".formatted(source.shown()));
        }
        return plan;
    }

    /** Plans the one score that comes from standard input: no settings file lies beside it. */
    void planPiped(Source source) throws UsageException {
        byFile.put(source.file(), plan(line));
    }

    /** Returns the files on which the plans rest: settings, and definitions that options name. */
    Set<Path> files() {
        Set<Path> all = new TreeSet<>(definitions);
        all.addAll(files.paths());
        return all;
    }

    /**
     * Returns what settings files say of tunes that are not there, as far as that can be known.
     *
     * @param asked the folders that were asked for as a whole
     */
    List<Sources.Problem> strayExceptions(List<Path> asked) {
        return StrayExceptions.remarks(files.unused(), asked, byFile.keySet());
    }

    /** Returns where the value of each option for a score comes from that is given; a null file is the line. */
    Map<String, SettingsFiles.Value> origins(Path file) throws UsageException {
        return files.of(file);
    }

    private CommandWords words(Path file) throws UsageException {
        Map<String, SettingsFiles.Value> values = files.of(file);
        if (values.isEmpty()) {
            return line;
        }
        Map<String, String> texts = new LinkedHashMap<>();
        for (CommandOption<?> option : options) {
            SettingsFiles.Value value = values.get(option.name());
            if (value != null && !(!option.hasValue() && value.text().equals(SettingsFile.NO))) {
                texts.put(option.name(), value.text());
            }
        }
        try {
            return line.over(options, texts);
        } catch (UsageException e) {
            throw inFile(e, values);
        }
    }

    private static UsageException inFile(UsageException e, Map<String, SettingsFiles.Value> values) {
        // Where the sentence names the option, only the file that has it is to blame.
        Set<Path> all = new TreeSet<>();
        Set<Path> naming = new TreeSet<>();
        values.forEach((name, value) -> {
            all.add(value.from());
            if (Pattern.compile("--%s(?![a-z-])".formatted(Pattern.quote(name)))
                    .matcher(e.lines())
                    .find()) {
                naming.add(value.from());
            }
        });
        Set<Path> from = naming.isEmpty() ? all : naming;
        List<String> names = from.stream().map(Path::toString).toList();
        return new UsageException("%s%n  This comes from %s.".formatted(e.lines(), String.join(", ", names)));
    }

    private MarkPlan plan(CommandWords words) throws UsageException {
        if (words == line && usual != null) {
            return usual;
        }
        Map<String, String> texts = new TreeMap<>();
        for (CommandOption<?> option : options) {
            String text = words.text(option);
            if (text != null) {
                texts.put(option.name(), text);
            }
        }
        MarkPlan plan = plans.get(texts);
        if (plan == null) {
            Outputs outputs = OutputOptions.of(words);
            Wanted.Beside beside = new Wanted.Beside(outputs.endings(), SteeringOptions.alternatives(words));
            plan = new MarkPlan(MarkOptions.settings(words), outputs, beside, fingerprint(texts));
            plans.put(texts, plan);
        }
        return plan;
    }

    private MarkPlan.Fingerprint fingerprint(Map<String, String> texts) {
        StringBuilder settings = new StringBuilder();
        StringBuilder contents = new StringBuilder();
        for (CommandOption<?> option : options) {
            String text = texts.get(option.name());
            if (text != null) {
                settings.append(option.name()).append('=').append(text).append('\n');
                for (Path file : option.reader().files(text)) {
                    definitions.add(file);
                    contents.append(Ledger.hash(file)).append(' ');
                }
            }
        }
        return new MarkPlan.Fingerprint(settings.toString(), ContentHash.of(contents.toString()), tool);
    }
}
