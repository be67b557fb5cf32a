package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;

/** Which patterns the left hand plays. */
final class PatternOption {

    static final String PATTERN = "pattern";
    private static final Pattern ITEM = Pattern.compile("(?:([^=]*)=)?(.+)");
    private static final Pattern TIME = Pattern.compile("[1-9]\\d?/[1-9]\\d?");
    private static final Pattern MEASURES = Pattern.compile("([1-9]\\d{0,4})(?:-([1-9]\\d{0,4}))?");

    private PatternOption() {}

    static void addTo(Options options) {
        ValueOption.add(
                options,
                PATTERN,
                "LIST",
                "Patterns of the left hand, ids or files with commas between; before one may stand a time (3/4=) or"
                        + " measures (17-24=) for which it holds. As the manner says or by time and tempo if not given.");
    }

    static PatternChoice of(CommandLine line) throws UsageException {
        String list = line.getOptionValue(PATTERN);
        List<PatternChoice.Named> named = new ArrayList<>();
        for (String item : list == null ? new String[0] : list.split(",")) {
            named.add(named(item.strip()));
        }
        return new PatternChoice(PatternLibrary.all(), named);
    }

    private static PatternChoice.Named named(String item) throws UsageException {
        Matcher parts = ITEM.matcher(item);
        if (!parts.matches()) {
            throw wrong(item);
        }
        org.bellowscribe.accompaniment.Pattern pattern =
                MarkCommand.look(parts.group(2).strip(), PATTERN, PatternLibrary::find);
        String key = parts.group(1);
        if (key == null) {
            return new PatternChoice.Named(pattern, null, 0, 0);
        }
        Matcher measures = MEASURES.matcher(key);
        if (measures.matches()) {
            int first = Integer.parseInt(measures.group(1));
            int last = measures.group(2) == null ? first : Integer.parseInt(measures.group(2));
            if (last >= first) {
                return new PatternChoice.Named(pattern, null, first, last);
            }
        } else if (TIME.matcher(key).matches()) {
            return new PatternChoice.Named(pattern, key, 0, 0);
        }
        throw wrong(item);
    }

    private static UsageException wrong(String item) {
        return new UsageException(("--pattern takes ids or files, each alone or after a time or measures, not %s.%n"
                        + "  Maybe write bass-chord, 3/4=bass-chord-chord or 17-24=sustained.")
                .formatted(item.isEmpty() ? "nothing" : item));
    }
}
