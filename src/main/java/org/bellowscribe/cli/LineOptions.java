package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.OptionGroup;
import org.bellowscribe.cli.option.WholeNumber;
import org.bellowscribe.musicxml.read.ReadingOptions;

/** Which line of a score is the melody, and how fast it goes. */
final class LineOptions {

    private static final CommandOption<String> PART = CommandOption.text(
                    "part",
                    "NAME|ID|N",
                    "The part with the melody; if not given, name, lyrics, clef, range and what each part does decide.")
            .in(OptionGroup.MARKED);
    private static final CommandOption<Integer> STAFF = new CommandOption<>(
                    "staff", "N", "The staff of that part; the first with notes if not given.", new WholeNumber(1, 99))
            .in(OptionGroup.MARKED);
    private static final CommandOption<String> VOICE = CommandOption.text(
                    "voice", "ID", "The voice of that staff; the highest if not given.")
            .in(OptionGroup.MARKED);

    private static final CommandOption<Integer> TEMPO = new CommandOption<>(
                    "tempo",
                    "N",
                    "Quarters a minute for which the air is reckoned; as the score says, or as is usual for the dance, if not given.",
                    new WholeNumber(20, 400))
            .in(OptionGroup.PLAYED);

    static final List<CommandOption<?>> ALL = List.of(PART, STAFF, VOICE, TEMPO);

    private LineOptions() {}

    static ReadingOptions of(CommandWords words) {
        return new ReadingOptions(words.get(PART), words.get(STAFF), words.get(VOICE), words.get(TEMPO));
    }
}
