package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.cli.Option;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.annotation.Annotators;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.instrument.file.InstrumentLibrary;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.manner.MannerLibrary;

/** The help text, made from the commands and catalogues themselves. */
final class Help {

    private static final int INDENT = 28;
    private static final int WIDTH = 100;

    private Help() {}

    static String text() {
        StringBuilder text = new StringBuilder();
        text.append("Marks button, bellows direction, left hand and air on tunes for the melodeon.\n");
        for (Command command : Commands.ALL) {
            text.append("\nbellowscribe %s %s\n".formatted(command.name(), command.usage()));
            text.append(wrap("  ", command.summary()));
            for (Option option : command.options().getOptions()) {
                text.append(entry(label(option), option.getDescription()));
            }
        }
        text.append(
                "\nINPUT is a score (.musicxml, .xml, .mxl), a folder of scores, or - alone: a score comes from\nstandard input, the result goes to standard output and the report to standard error.\n");
        text.append("\nMarks\n");
        for (Annotator annotator : Annotators.all()) {
            text.append(entry(annotator.id() + (annotator.byDefault() ? " *" : ""), annotator.summary()));
        }
        text.append("  * written unless --marks says otherwise\n");
        text.append("\nStyles\n");
        for (Style style : StyleLibrary.all()) {
            text.append(entry(style.id(), style.name()));
        }
        text.append("\nManners of playing\n");
        for (Manner manner : MannerLibrary.all()) {
            text.append(entry(manner.id(), manner.summary()));
        }
        text.append("\nInstruments\n");
        text.append(wrap(
                "  ",
                String.join(
                        ", ",
                        InstrumentLibrary.all().stream()
                                .map(entry -> entry.instrument().id())
                                .toList())));
        text.append("""

                Exit codes: 0 all done, 1 some tune not, 2 wrong use, 3 the tool broke.

                Marks are a proposal. Never force the bellows; if playing hurts, stop and ask a teacher or a
                health professional.
                """);
        return text.toString();
    }

    private static String label(Option option) {
        return "--" + option.getLongOpt() + (option.hasArg() ? " " + option.getArgName() : "");
    }

    private static String entry(String label, String description) {
        String padded = "  " + label + " ".repeat(Math.max(1, INDENT - 2 - label.length()));
        List<String> lines = lines(description, WIDTH - INDENT);
        return padded + String.join("\n" + " ".repeat(INDENT), lines) + "\n";
    }

    private static String wrap(String indent, String paragraph) {
        return indent + String.join("\n" + indent, lines(paragraph, WIDTH - indent.length())) + "\n";
    }

    // Breaks at spaces; a list of marks without spaces breaks at its commas.
    private static List<String> lines(String paragraph, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.split("(?<=[ ,])", -1)) {
            if (!line.isEmpty() && line.length() + word.stripTrailing().length() > width) {
                lines.add(line.toString().stripTrailing());
                line.setLength(0);
            }
            line.append(word);
        }
        lines.add(line.toString().stripTrailing());
        return lines;
    }
}
