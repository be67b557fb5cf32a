package org.bellowscribe.cli;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;
import org.bellowscribe.diagnostic.DiagnosedException;

/** Shows styles of marks. */
final class StylesCommand extends LibraryCommand<Style> {

    StylesCommand() {
        super(StyleLibrary.library());
    }

    @Override
    public String summary() {
        return "Alone or with list it lists the styles; show tells what the signs of one of them, or of a style file,"
                + " mean, at a short tune; check looks for what is wrong in a file and lists what it does not set.";
    }

    @Override
    String list() {
        StringBuilder text = new StringBuilder();
        StyleLibrary.all().forEach(style -> {
            text.append("  %-18s %s%n".formatted(style.id(), style.name()));
            if (!style.programs().isEmpty()) {
                text.append("  %-18s   shown whole by %s%n".formatted("", style.programs()));
            }
        });
        return text.toString();
    }

    @Override
    String show(Style shown) {
        return StyleLegend.of(shown);
    }

    @Override
    List<String> more(String name) throws DiagnosedException {
        List<String> inherited = StyleLibrary.inherited(name);
        List<String> lines = new ArrayList<>();
        if (!inherited.isEmpty()) {
            lines.add("Not set, so as in %s, in English:".formatted(StyleLibrary.DEFAULT_ID));
            inherited.forEach(each -> lines.add("  " + each));
        }
        return lines;
    }

    @Override
    String title(Style shown) {
        return shown.id();
    }
}
