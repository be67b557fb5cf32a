package org.bellowscribe.cli;

import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.OptionGroup;

/** Asking what holds for the tunes instead of marking them. */
final class SettingsOption {

    static final CommandOption<Boolean> PRINT_SETTINGS = CommandOption.flag(
                    "print-settings", "Say which options hold for the tunes and where they come from; mark nothing.")
            .in(OptionGroup.RUN);

    private SettingsOption() {}
}
