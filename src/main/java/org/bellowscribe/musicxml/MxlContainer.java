package org.bellowscribe.musicxml;

import java.util.ArrayList;
import java.util.List;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/**
 * Finds the score among the entries of a compressed file: the one that {@code META-INF/container.xml} names first. Source:
 * W3C Music Notation Community Group, MusicXML 4.0, "Compressed .mxl files".
 */
final class MxlContainer implements XmlVisitor {

    static final String NAME = "META-INF/container.xml";

    // A rootfile without a media type is a MusicXML file.
    private static final String SCORE_TYPE = "application/vnd.recordare.musicxml+xml";

    private final List<String> paths = new ArrayList<>();

    private MxlContainer() {}

    /** Returns the path of the score that a table of contents names. */
    static String scorePath(byte[] container) throws DiagnosedException {
        MxlContainer table = new MxlContainer();
        XmlWalk.over(TextEncoding.of(container).decode(container), table);
        if (table.paths.isEmpty()) {
            throw MxlRefusal.of("The table of contents of the compressed file names no score.");
        }
        return table.paths.get(0);
    }

    /** Returns the entry that a path names; null if there is none. */
    static @Nullable ZipItem find(List<ZipItem> items, String path) {
        String wanted = normal(path);
        for (ZipItem item : items) {
            if (normal(item.name()).equals(wanted)) {
                return item;
            }
        }
        // Names in an old zip code page: only their ASCII characters can be compared.
        List<ZipItem> alike = items.stream()
                .filter(item -> ascii(normal(item.name())).equals(ascii(wanted)))
                .toList();
        return alike.size() == 1 ? alike.get(0) : null;
    }

    /** Returns the entry that must be the score where there is no table of contents; null if none or several could be. */
    static @Nullable ZipItem onlyScore(List<ZipItem> items) {
        List<ZipItem> scores = items.stream()
                .filter(item -> item.name().matches("(?i)(?!META-INF/)(.*/)?[^/]*\\.(xml|musicxml)"))
                .toList();
        return scores.size() == 1 ? scores.get(0) : null;
    }

    @Override
    public void end(XmlElement element) {
        String path = element.name().equals("rootfile") ? element.attribute("full-path") : null;
        String type = element.attribute("media-type");
        if (path != null && (type == null || type.equals(SCORE_TYPE))) {
            paths.add(XmlText.unescape(path));
        }
    }

    private static String normal(String path) {
        return path.replace('\\', '/').replaceFirst("^(\\./|/)+", "");
    }

    private static String ascii(String name) {
        return name.replaceAll("[^\\x00-\\x7F]+", "?");
    }
}
