package org.bellowscribe.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bellowscribe.batch.EditionJobs;
import org.bellowscribe.book.BookInstrument;
import org.bellowscribe.book.Wish;
import org.bellowscribe.book.Wishes;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.Place;
import org.jspecify.annotations.Nullable;

/** Makes settings of what a book wishes, with the readers of the command line; says line and column of what they refuse. */
final class BookSettings {

    private static final String INSTRUMENT = "instrument";
    private static final String PINS = "pins";
    private static final Set<String> ONE_FILE = Set.of(INSTRUMENT, "style", "manner", "grading", "change-times");

    private static final Set<String> LISTS = Set.of("pattern", "also-for");

    private final Path folder;
    private final boolean record;
    private final Map<String, CommandOption<?>> options = new LinkedHashMap<>();
    private final Map<SortedMap<String, String>, EditionJobs.Plan> plans = new HashMap<>();
    private final Set<Diagnostic> problems = new LinkedHashSet<>();

    /**
     * Creates settings.
     *
     * @param folder the folder of the book file, from which its paths are seen
     * @param record true if every decision is to be written beside its sheet
     */
    BookSettings(Path folder, boolean record) {
        this.folder = folder;
        this.record = record;
        MarkOptions.all().forEach(option -> options.put(option.name(), option));
    }

    /** Returns all that is wrong so far, each thing once. */
    List<Diagnostic> problems() {
        return List.copyOf(problems);
    }

    /**
     * Returns how a tune is marked.
     *
     * @param place where to complain of wishes that do not go together
     * @return null if that is a problem
     */
    EditionJobs.@Nullable Plan plan(BookInstrument instrument, Wishes wishes, Place place) {
        SortedMap<String, Wish> all = new TreeMap<>(wishes.byName());
        all.put(INSTRUMENT, new Wish(INSTRUMENT, instrument.id(), instrument.place()));
        SortedMap<String, String> texts = new TreeMap<>();
        all.forEach((name, wish) -> texts.put(name, wish.value()));
        EditionJobs.Plan known = plans.get(texts);
        EditionJobs.Plan plan = known == null ? plan(all, place) : known;
        if (plan != null) {
            plans.put(texts, plan);
        }
        return plan;
    }

    private EditionJobs.@Nullable Plan plan(SortedMap<String, Wish> wishes, Place place) {
        int before = problems.size();
        Map<String, Object> values = new LinkedHashMap<>();
        wishes.values().forEach(wish -> read(wish, values));
        if (record) {
            values.put(OutputOptions.RECORD.name(), true);
        }
        try {
            if (problems.size() == before && wishes.values().stream().allMatch(wish -> isRead(wish, values))) {
                CommandWords words = CommandWords.of(values);
                return new EditionJobs.Plan(MarkOptions.settings(words), OutputOptions.of(words));
            }
        } catch (UsageException e) {
            problems.add(problem(e, "", place));
        }
        return null;
    }

    private static boolean isRead(Wish wish, Map<String, Object> values) {
        return wish.value().equals("no") || values.containsKey(wish.name());
    }

    private void read(Wish wish, Map<String, Object> values) {
        CommandOption<?> option = options.get(wish.name());
        if (option == null) {
            throw new IllegalStateException("The schema must not allow %s.".formatted(wish.name()));
        }
        if (option.argument().isEmpty()) {
            if (wish.value().equals("yes")) {
                values.put(wish.name(), true);
            }
            return;
        }
        try {
            values.put(wish.name(), option.reader().read(wish.name(), located(wish)));
            requireFile(wish);
        } catch (UsageException e) {
            problems.add(problem(e, wish.value(), wish.place()));
        }
    }

    private void requireFile(Wish wish) {
        if (wish.name().equals(PINS) && !wish.value().equals("none") && !Files.exists(folder.resolve(wish.value()))) {
            problems.add(Diagnostic.error(
                    DiagnosticCode.BAD_DEFINITION,
                    wish.place(),
                    "There is no file %s with pins.".formatted(wish.value()),
                    "Maybe its path is not seen from the folder of the book file."));
        }
    }

    /** Returns a value with its paths as they are seen from here. */
    private String located(Wish wish) {
        if (wish.name().equals(PINS)) {
            return wish.value().equals("none") ? wish.value() : seen(wish.value());
        }
        if (ONE_FILE.contains(wish.name())) {
            return isPath(wish.value()) ? seen(wish.value()) : wish.value();
        }
        return LISTS.contains(wish.name())
                ? Arrays.stream(wish.value().split(",", -1)).map(this::item).collect(Collectors.joining(","))
                : wish.value();
    }

    private String item(String item) {
        int sign = item.indexOf('=');
        String name = item.substring(sign + 1).strip();
        return item.substring(0, sign + 1) + (isPath(name) ? seen(name) : name);
    }

    private static boolean isPath(String name) {
        return name.endsWith(".xml") || name.contains("/") || name.contains("\\");
    }

    private String seen(String path) {
        try {
            return folder.resolve(path).toString();
        } catch (InvalidPathException e) {
            // The reader says that no file can be called so.
            return path;
        }
    }

    private static Diagnostic problem(UsageException e, String value, Place place) {
        if (e.diagnostics().isEmpty()) {
            List<String> lines = e.lines()
                    .lines()
                    .map(line -> line.strip().replaceAll("--(?=[a-z])", ""))
                    .toList();
            return Diagnostic.error(
                    DiagnosticCode.BAD_DEFINITION,
                    place,
                    lines.get(0),
                    lines.stream().skip(1).toArray(String[]::new));
        }
        Diagnostic first = e.diagnostics().get(0);
        boolean isAboutFile =
                first.code() == DiagnosticCode.UNREADABLE || !first.place().equals(Place.FILE);
        String where = Stream.of(value, first.place().describe())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
        String text = isAboutFile ? where + ": " + first.text() : first.text();
        return new Diagnostic(first.severity(), first.code(), place, text, first.advice());
    }
}
