package org.bellowscribe.solver.manner;

import java.util.List;
import java.util.Locale;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.RuleCase;
import org.jspecify.annotations.Nullable;

/** Writes manner files, in the form of {@code schemas/manner.xsd}. */
public final class MannerWriter {

    private final StringBuilder text = new StringBuilder();

    private MannerWriter() {}

    /**
     * Writes a manner.
     *
     * @param manner the manner; its id names the file's manner
     * @param base a manner of the library that the file is to be based on, so that only what differs is written; any other
     *     is written out whole
     * @return the file's text
     */
    public static String write(Manner manner, Manner base) {
        MannerWriter writer = new MannerWriter();
        writer.add(manner, base);
        return writer.text.toString();
    }

    /** Returns an id made of a name: small letters and digits, joined by hyphens; {@code learned} if nothing is left. */
    public static String id(String name) {
        String id = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return id.isEmpty() ? "learned" : id;
    }

    private void add(Manner manner, Manner base) {
        boolean based = MannerLibrary.ids().contains(base.id());
        text.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<manner id=\"").append(manner.id());
        text.append(based ? "\" based-on=\"%s\">\n".formatted(base.id()) : "\">\n");
        text.append("  <summary>").append(escaped(manner.summary())).append("</summary>\n");
        manner.remarks()
                .forEach(remark ->
                        text.append("  <remark>").append(escaped(remark)).append("</remark>\n"));
        if (!based) {
            manner.patterns()
                    .forEach(each -> text.append("  <pattern id=\"")
                            .append(each.pattern().id())
                            .append(each.time() == null ? "\"/>\n" : "\" time=\"%s\"/>\n".formatted(each.time())));
        }
        String rule = "";
        for (RuleCase each : differing(manner, based ? base : null)) {
            text.append(each.rule().equals(rule) ? "" : closing(rule) + "  <rule id=\"" + each.rule() + "\">\n");
            text.append("    <points case=\"%s\">%d</points>\n".formatted(each.name(), points(manner, each)));
            rule = each.rule();
        }
        text.append(closing(rule)).append("</manner>\n");
    }

    private static String closing(String rule) {
        return rule.isEmpty() ? "" : "  </rule>\n";
    }

    private static List<RuleCase> differing(Manner manner, @Nullable Manner base) {
        return RuleCase.all().stream()
                .filter(each -> base == null || points(manner, each) != points(base, each))
                .toList();
    }

    private static int points(Manner manner, RuleCase at) {
        return manner.byRule().getOrDefault(at.rule(), Points.NONE).of(at.name());
    }

    private static String escaped(String sentence) {
        return sentence.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
