package org.bellowscribe.cli;

import java.util.List;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.OptionList;

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
        page.labels(command.options().stream().map(CommandOption::label).toList());
        OptionList.headed(command.options()).forEach((heading, options) -> {
            page.heading(heading);
            options.forEach(option -> page.entry(option.label(), option.help()));
        });
        page.labels(List.of());
        command.addTo(page);
        return page.paragraph(HelpPage.EXIT_CODES).paragraph(HelpPage.CAUTION).text();
    }
}
