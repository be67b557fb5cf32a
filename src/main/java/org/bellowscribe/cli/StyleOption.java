package org.bellowscribe.cli;

import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.CommandWords;
import org.bellowscribe.cli.option.LibraryName;
import org.bellowscribe.cli.option.OptionGroup;

/** The labels and signs of the marks. */
final class StyleOption {

    static final CommandOption<Style> STYLE = new CommandOption<>(
                    "style",
                    "ID|FILE",
                    "Labels and signs; %s if not given.".formatted(StyleLibrary.DEFAULT_ID),
                    new LibraryName<>(StyleLibrary.library()))
            .in(OptionGroup.PRINTED);

    private StyleOption() {}

    /** Returns the style of a line. */
    static Style style(CommandWords words) {
        return words.get(STYLE, StyleLibrary.library().of(StyleLibrary.DEFAULT_ID));
    }
}
