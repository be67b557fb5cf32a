package org.bellowscribe.cli;

import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.Options;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.manner.MannerLibrary;

/** In which manner to play. */
final class MannerOption {

    private static final String MANNER = "manner";

    private MannerOption() {}

    static void addTo(Options options) {
        ValueOption.add(
                options,
                MANNER,
                "ID|FILE",
                "The manner of playing: what each rule charges; %s if not given.".formatted(MannerLibrary.DEFAULT_ID));
    }

    static Manner of(CommandLine line) throws UsageException {
        return MarkCommand.look(line.getOptionValue(MANNER, MannerLibrary.DEFAULT_ID), MANNER, MannerLibrary::find);
    }
}
