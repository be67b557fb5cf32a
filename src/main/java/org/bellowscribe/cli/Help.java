package org.bellowscribe.cli;

import org.bellowscribe.cli.option.CommandOption;

/** The help, made from the commands and their options. */
final class Help {

    private Help() {}

    /** Returns what the tool can do. */
    static String text() {
        HelpPage page = new HelpPage();
        page.line("Marks button, bellows direction, left hand and air on tunes for the melodeon.");
        for (Command command : Commands.ALL) {
            page.line("").line(("bellowscribe " + command.name() + " " + command.usage()).strip());
            page.indented(command.summary());
        }
        return page.paragraph(HelpPage.INPUT)
                .paragraph("bellowscribe COMMAND --help lists the options of a command, such as mark --help;"
                        + " --version prints the version.")
                .paragraph(HelpPage.EXIT_CODES)
                .paragraph(HelpPage.CAUTION)
                .text();
    }

    /** Returns what one command can do, with its options. */
    static String of(Command command) {
        HelpPage page = new HelpPage();
        page.line(("bellowscribe " + command.name() + " " + command.usage()).strip());
        page.indented(command.summary());
        if (!command.options().isEmpty()) {
            page.heading("Options");
        }
        for (CommandOption<?> option : command.options()) {
            page.entry(option.label(), option.help());
        }
        command.addTo(page);
        return page.paragraph(HelpPage.EXIT_CODES).paragraph(HelpPage.CAUTION).text();
    }
}
