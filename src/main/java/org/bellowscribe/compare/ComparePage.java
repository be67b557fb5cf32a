package org.bellowscribe.compare;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The page on which two ways are compared, and the two files that it needs beside it. */
public final class ComparePage {

    /** What the page is called. */
    public static final String NAME = "compare.html";

    /** What the script and the look of the page are called. */
    public static final List<String> BESIDE = List.of("compare.js", "compare.css");

    private ComparePage() {}

    /**
     * Returns the page.
     *
     * @param tunes the tunes in the order in which to show them
     * @param lots by which order and letters were drawn, so that the page does not tell what the ways are called; null if it
     *     does
     */
    public static String of(List<ComparedTune> tunes, @Nullable Lots lots) {
        Html sections = new Html();
        TuneSection section = new TuneSection(sections, lots == null);
        for (int i = 0; i < tunes.size(); i++) {
            section.write(i + 1, tunes.get(i));
        }
        Html html = new Html();
        html.begin("html", "lang", "en").begin("head");
        html.empty("meta", "charset", "utf-8");
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.leaf("title", "Two ways to play");
        html.empty("link", "rel", "stylesheet", "href", "compare.css").end();
        // Choices are kept for this very page, not for another of the same name.
        String run = Integer.toHexString(sections.toString().hashCode());
        html.begin("body", "data-seed", lots == null ? "" : lots.seed(), "data-run", run);
        html.begin("main").leaf("h1", "Two ways to play");
        introduce(html, lots != null);
        contents(html, tunes);
        html.begin("label").empty("input", "type", "checkbox", "id", "only-different");
        html.words(" Note by note: only measures that differ").end();
        html.begin("form", "id", "choices", "autocomplete", "off").add(sections).end();
        save(html);
        html.end();
        html.leaf("script", "", "src", "compare.js").end().end();
        return "<!DOCTYPE html>\n" + html;
    }

    private static void introduce(Html html, boolean blind) {
        html.leaf(
                "p",
                "Every tune is played in two ways, A and B. Play both, or read them, and choose; a remark says why. Nothing"
                        + " leaves this computer: at the end you save a file.");
        if (blind) {
            html.leaf("p", "What A and B are is drawn anew for each tune, and not told here.");
        }
        html.leaf(
                "p",
                "If a way of playing hurts, stop, choose the other or neither, and ask a teacher or a health professional."
                        + " Never force the bellows.");
        html.begin("noscript")
                .leaf("p", "Without JavaScript the page shows everything but saves no choices.")
                .end();
    }

    private static void contents(Html html, List<ComparedTune> tunes) {
        html.begin("nav", "aria-label", "Tunes").begin("ol");
        for (int i = 0; i < tunes.size(); i++) {
            html.begin("li")
                    .leaf("a", tunes.get(i).title(), "href", "#tune-" + (i + 1))
                    .end();
        }
        html.end().end();
    }

    private static void save(Html html) {
        html.begin("div", "id", "save", "hidden", "");
        html.begin("label").words("Your name or a sign, if you like ");
        html.empty("input", "type", "text", "id", "judge", "maxlength", "200").end();
        html.leaf("button", "Save choices as CSV", "type", "button", "id", "save-button");
        html.leaf("p", "", "id", "state", "role", "status");
        html.end();
    }

    /**
     * Returns a file that the page needs.
     *
     * @param name one of {@link #BESIDE}
     */
    public static byte[] file(String name) {
        try (InputStream stream = Objects.requireNonNull(ComparePage.class.getResourceAsStream(name), name)) {
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
