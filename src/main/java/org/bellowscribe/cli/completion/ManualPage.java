package org.bellowscribe.cli.completion;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.bellowscribe.cli.option.CommandOption;
import org.bellowscribe.cli.option.OptionList;

/** The manual page, in the man macros of troff. */
public final class ManualPage {

    private final StringBuilder text = new StringBuilder();

    private ManualPage() {}

    /**
     * Returns the page.
     *
     * @param commands all commands
     * @param version the version of the tool
     * @param closing paragraphs about all commands: inputs, exit codes, cautions
     */
    public static String of(List<DescribedCommand> commands, String version, List<String> closing) {
        ManualPage page = new ManualPage();
        page.macro(".TH BELLOWSCRIBE 1 \"\" \"Bellowscribe " + escaped(version) + "\" \"User commands\"");
        page.macro(".SH NAME");
        page.line("bellowscribe - marks button, bellows direction, left hand and air on tunes for the melodeon");
        page.macro(".SH SYNOPSIS");
        commands.forEach(page::synopsis);
        page.macro(".SH DESCRIPTION");
        closing.forEach(paragraph -> page.paragraph(paragraph));
        commands.forEach(page::command);
        page.macro(".SH ENVIRONMENT");
        page.entry("NO_COLOR", "If set, errors have no color on a terminal.");
        page.macro(".SH FILES");
        page.entry(
                "bellowscribe.xml",
                "Settings beside the scores and above them; mark --print-settings shows what holds.");
        return page.text.toString();
    }

    private void synopsis(DescribedCommand command) {
        macro(".P");
        macro(".B bellowscribe " + escaped(command.name()));
        if (!command.usage().isEmpty()) {
            line(command.usage());
        }
    }

    private void command(DescribedCommand command) {
        macro(".SH " + escaped(command.name().toUpperCase(Locale.ROOT)));
        line(command.summary());
        Map<String, List<CommandOption<?>>> headed = OptionList.headed(command.options());
        headed.forEach((heading, options) -> {
            if (headed.size() > 1) {
                macro(".SS " + escaped(heading));
            }
            options.forEach(option -> entry(option.label(), option.help()));
        });
    }

    private void entry(String label, String meaning) {
        macro(".TP");
        macro(".B " + escaped(label));
        line(meaning);
    }

    private void paragraph(String paragraph) {
        macro(".P");
        line(paragraph);
    }

    private void macro(String line) {
        text.append(line).append('\n');
    }

    private void line(String line) {
        String safe = escaped(line);
        // At the start of a line these would be commands.
        macro(safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe);
    }

    private static String escaped(String line) {
        return line.replace("\\", "\\e")
                .replace("-", "\\-")
                .replace("'", "\\(aq")
                .replace("`", "\\(ga");
    }
}
