package org.bellowscribe.cli;

import org.bellowscribe.annotation.style.Style;
import org.bellowscribe.annotation.style.StyleLibrary;

/** Shows styles of marks. */
final class StylesCommand extends LibraryCommand<Style> {

    StylesCommand() {
        super(StyleLibrary.library());
    }

    @Override
    public String summary() {
        return "Alone or with list it lists the styles; show tells what the signs of one of them, or of a style file,"
                + " mean, at a short tune; check looks for what is wrong in a file.";
    }

    @Override
    String list() {
        StringBuilder text = new StringBuilder();
        StyleLibrary.all().forEach(style -> text.append("  %-18s %s%n".formatted(style.id(), style.name())));
        return text.toString();
    }

    @Override
    String show(Style shown) {
        return StyleLegend.of(shown);
    }

    @Override
    String title(Style shown) {
        return shown.id();
    }
}
