package org.bellowscribe.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.SignedMarks;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.FilePath;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.manner.MannerLibrary;

/** What can be said about learning a manner of playing. */
final class LearnOptions {

    static final CommandOption<Manner> BASED_ON = new CommandOption<>(
            "based-on",
            "ID|FILE",
            "learn: the manner whose points are changed; %s if not given.".formatted(MannerLibrary.DEFAULT_ID),
            new LibraryName<>(MannerLibrary.library()));
    static final CommandOption<Path> OUT =
            new CommandOption<>("out", "FILE", "learn: the manner file to write.", new FilePath());
    /** Read by the settings under the same name. */
    private static final CommandOption<Boolean> KEEP_EDITS = CommandOption.flag(
            SteeringOptions.KEEP_EDITS.name(),
            "learn: every mark of a sheet counts, not only those that end in %s and those of the pins."
                    .formatted(SignedMarks.SIGN));

    /** All of them, in the order in which to list them; those of mark are the ones that say how the scores were marked. */
    static final List<CommandOption<?>> ALL = all();

    private LearnOptions() {}

    private static List<CommandOption<?>> all() {
        List<CommandOption<?>> all = new ArrayList<>(List.of(BASED_ON, OUT, KEEP_EDITS, SteeringOptions.PINS));
        all.addAll(MarkOptions.HOW_MARKED);
        all.addAll(LineOptions.ALL);
        all.addAll(FileOptions.READING);
        return List.copyOf(all);
    }
}
