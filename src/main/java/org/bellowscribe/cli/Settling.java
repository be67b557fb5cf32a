package org.bellowscribe.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;

/**
 * Files that were changed and may not be written whole yet. One has settled when it looks the same twice and like a whole
 * file; what looks like half a file for longer is let through, so that its mistake is told.
 */
final class Settling {

    private static final long PATIENCE = 2_000_000_000L;

    private final LongSupplier clock;
    private final Map<Path, State> waiting = new LinkedHashMap<>();

    private record State(long size, @Nullable FileTime time, long since) {

        boolean isLike(State other) {
            return size == other.size && time != null && time.equals(other.time);
        }
    }

    /**
     * Creates it.
     *
     * @param clock tells nanoseconds
     */
    Settling(LongSupplier clock) {
        this.clock = clock;
    }

    /** Takes files that were changed. */
    void add(Set<Path> changed) {
        changed.forEach(file -> waiting.put(file, new State(-1, null, clock.getAsLong())));
    }

    /** Returns those that have settled, or are gone, since they were asked for the last time. */
    Set<Path> settled() {
        Set<Path> settled = new LinkedHashSet<>();
        Iterator<Map.Entry<Path, State>> all = waiting.entrySet().iterator();
        while (all.hasNext()) {
            Map.Entry<Path, State> each = all.next();
            State before = each.getValue();
            State now = state(each.getKey(), before.since());
            if (now == null) {
                settled.add(each.getKey());
                all.remove();
            } else if (now.isLike(before)) {
                if (isWhole(each.getKey()) || clock.getAsLong() - before.since() > PATIENCE) {
                    settled.add(each.getKey());
                    all.remove();
                }
            } else {
                each.setValue(new State(now.size(), now.time(), clock.getAsLong()));
            }
        }
        return settled;
    }

    private static @Nullable State state(Path file, long since) {
        try {
            return new State(Files.size(file), Files.getLastModifiedTime(file), since);
        } catch (IOException e) {
            return null;
        }
    }

    /** Tells whether a file looks whole: a compressed score has its table of contents, XML ends with a tag. */
    static boolean isWhole(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".mxl")) {
            try (ZipFile zip = new ZipFile(file.toFile())) {
                return zip.size() > 0;
            } catch (IOException e) {
                return false;
            }
        }
        try {
            String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)
                    .replace("\0", "")
                    .strip();
            int end = text.lastIndexOf("</");
            return end > 0 && text.endsWith(">") && closesRoot(text, text.substring(end + 2, text.length() - 1));
        } catch (IOException e) {
            return false;
        }
    }

    // The last tag of a whole file is that of its first element.
    private static boolean closesRoot(String text, String last) {
        return text.contains("<" + last.strip()) && !last.contains(">") && isFirst(text, last.strip());
    }

    private static boolean isFirst(String text, String name) {
        int begin = 0;
        while (begin >= 0 && begin + 1 < text.length() && "?!".indexOf(text.charAt(begin + 1)) >= 0) {
            begin = text.indexOf('<', begin + 1);
        }
        return begin >= 0 && text.startsWith(name, begin + 1);
    }
}
