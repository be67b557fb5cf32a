package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.accompaniment.Pattern;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.ValueReader;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.cli.option.WordList;

/** Reads patterns of the left hand, each for the tune, or for a time or some measures. */
record PatternList() implements ValueReader<List<PatternChoice.Named>> {

    private static final LibraryName<Pattern> PATTERN = new LibraryName<>(PatternLibrary.library());
    private static final WholeNumber FIGURE = new WholeNumber(1, 99);
    private static final WholeNumber MEASURE = new WholeNumber(1, 99_999);

    @Override
    public List<String> words() {
        return PATTERN.words();
    }

    @Override
    public List<PatternChoice.Named> read(String option, String list) throws UsageException {
        List<PatternChoice.Named> named = new ArrayList<>();
        for (String item : WordList.split(list)) {
            named.add(named(option, item));
        }
        return named;
    }

    @Override
    public List<Path> files(String list) {
        return WordList.split(list).stream()
                .flatMap(item -> PATTERN.files(name(item)).stream())
                .toList();
    }

    @Override
    public String fromFolder(Path folder, String list) {
        return String.join(
                ",",
                WordList.split(list).stream()
                        .map(item -> item.substring(0, item.indexOf('=') + 1) + PATTERN.fromFolder(folder, name(item)))
                        .toList());
    }

    private static String name(String item) {
        return item.substring(item.indexOf('=') + 1).strip();
    }

    private static PatternChoice.Named named(String option, String item) throws UsageException {
        int sign = item.indexOf('=');
        String name = name(item);
        if (name.isEmpty()) {
            throw wrong(item);
        }
        Pattern pattern = PATTERN.read(option, name);
        if (sign < 0) {
            return new PatternChoice.Named(pattern, null, 0, 0);
        }
        String key = item.substring(0, sign).strip();
        try {
            return key.contains("/") ? forTime(pattern, key) : forMeasures(pattern, key);
        } catch (UsageException e) {
            throw wrong(item);
        }
    }

    private static PatternChoice.Named forTime(Pattern pattern, String time) throws UsageException {
        int line = time.indexOf('/');
        int beats = FIGURE.read("", time.substring(0, line));
        int type = FIGURE.read("", time.substring(line + 1));
        return new PatternChoice.Named(pattern, beats + "/" + type, 0, 0);
    }

    private static PatternChoice.Named forMeasures(Pattern pattern, String measures) throws UsageException {
        int hyphen = measures.indexOf('-');
        int first = MEASURE.read("", hyphen < 0 ? measures : measures.substring(0, hyphen));
        int last = hyphen < 0 ? first : MEASURE.read("", measures.substring(hyphen + 1));
        if (last < first) {
            throw wrong(measures);
        }
        return new PatternChoice.Named(pattern, null, first, last);
    }

    private static UsageException wrong(String item) {
        return new UsageException(("--pattern takes ids or files, each alone or after a time or measures, not %s.%n"
                        + "  Maybe write bass-chord, 3/4=bass-chord-chord or 17-24=sustained.")
                .formatted(item.isEmpty() ? "nothing" : item));
    }
}
