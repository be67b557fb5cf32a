package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.UsageException;
import org.bellowscribe.cli.option.WordList;
import org.bellowscribe.marking.LeftHandChoice;
import org.jspecify.annotations.Nullable;

/** What the left hand plays, and what to write out of it. */
final class LeftHandOptions {

    private static final String PART = "part";
    private static final String SHEET = "sheet";

    static final CommandOption<List<PatternChoice.Named>> PATTERN = new CommandOption<>(
                    "pattern",
                    "LIST",
                    "Patterns of the left hand, ids or files with commas between; before one may stand a time (3/4=) or measures"
                            + " (17-24=) for which it holds. As the manner says or by time and tempo if not given.",
                    new PatternList())
            .in(OptionGroup.PLAYED);
    static final CommandOption<String> LEFT_HAND_PART = CommandOption.text(
                    "left-hand-part",
                    "NAME|ID|N",
                    "The part, in it the lowest staff, that has the left hand written out: a note alone is a bass, notes together"
                            + " are a chord. If not given, patterns and harmony decide.")
            .in(OptionGroup.PLAYED);
    static final CommandOption<List<String>> WRITTEN = new CommandOption<>(
                    "written-left-hand",
                    "LIST",
                    "part: add a part in the bass clef with the notes that the left hand sounds; sheet: write them as a score of"
                            + " their own, NAME.left-hand.musicxml; or part,sheet.",
                    new WordList(List.of(PART, SHEET)))
            .in(OptionGroup.PRINTED);

    private LeftHandOptions() {}

    static PatternChoice patterns(CommandWords words) {
        return new PatternChoice(PatternLibrary.all(), words.get(PATTERN, List.of()));
    }

    /** Returns what the user calls the part that has the left hand; null if patterns decide. */
    static @Nullable String part(CommandWords words) throws UsageException {
        if (words.has(LEFT_HAND_PART) && words.has(PATTERN)) {
            throw new UsageException(
                    "--left-hand-part leaves nothing for --pattern to decide.%n  Maybe leave one out.".formatted());
        }
        return words.get(LEFT_HAND_PART);
    }

    static LeftHandChoice written(CommandWords words) throws UsageException {
        List<String> written = words.get(WRITTEN, List.of());
        boolean sheet = written.contains(SHEET);
        if (sheet && FileOptions.isPiped(words)) {
            throw new UsageException(
                    "--%s sheet needs files: the result of the input - goes to standard output.%n  Maybe ask for part."
                            .formatted(WRITTEN.name()));
        }
        if (sheet && words.has(FileOptions.IN_PLACE)) {
            throw new UsageException("--%s sheet goes with --out: beside your scores it would be taken for one of them."
                    .formatted(WRITTEN.name()));
        }
        return new LeftHandChoice(written.contains(PART), sheet);
    }
}
