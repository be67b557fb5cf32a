package org.bellowscribe.batch.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What is remembered of earlier runs in a folder for results, in a hidden file there. A line is added as soon as a tune is
 * done, so a run that is killed loses no more than the tune it was at; a line that was cut short does not count. What
 * cannot be remembered is only done once more.
 */
public final class Ledger {

    /** How the names of all such files begin; each share of a library has one of its own. */
    static final String NAME = ".bellowscribe-results";

    private final Path folder;
    private final Path file;
    private final Map<String, List<Entry>> earlier = new HashMap<>();
    private final SortedMap<String, Entry> own = new TreeMap<>();

    private Ledger(Path folder, Path file) {
        this.folder = folder;
        this.file = file;
    }

    /**
     * Reads what is remembered in a folder.
     *
     * @param share words for the share of a library that this run works on; empty for the whole
     */
    public static Ledger open(Path folder, String share) {
        Ledger ledger = new Ledger(folder, folder.resolve(NAME + share));
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, NAME + "*")) {
            for (Path each : files) {
                ledger.read(each);
            }
        } catch (IOException e) {
            // No folder, or none that can be read: nothing is remembered.
        }
        return ledger;
    }

    private void read(Path each) throws IOException {
        if (!Files.isRegularFile(each, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        String text = new String(Files.readAllBytes(each), StandardCharsets.UTF_8);
        boolean isOwn = each.equals(file);
        text.lines().map(Entry::of).forEach(entry -> {
            if (entry != null) {
                earlier.computeIfAbsent(entry.place(), any -> new ArrayList<>(1))
                        .add(entry);
                if (isOwn) {
                    own.put(entry.place(), entry);
                }
            }
        });
    }

    /** Returns what earlier runs have noted about a place, the latest last. */
    public List<Entry> of(String place) {
        return earlier.getOrDefault(place, List.of());
    }

    /** Returns the first file of an entry that is not there any more, or not as it was written; null if all are. */
    public Entry.@Nullable File changed(Entry entry) {
        for (Entry.File each : entry.files()) {
            if (!each.hash().equals(hash(folder.resolve(each.place())))) {
                return each;
            }
        }
        return null;
    }

    /** Returns the hash of a file; that of nothing if it is not there, is a link or cannot be read. */
    public static String hash(Path path) {
        try {
            return Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
                    ? ContentHash.of(Files.readAllBytes(path))
                    : ContentHash.NONE;
        } catch (IOException e) {
            return ContentHash.NONE;
        }
    }

    /** Returns what a place below the folder is called here, with slashes. */
    public String place(Path path) {
        return folder.relativize(path).toString().replace(path.getFileSystem().getSeparator(), "/");
    }

    /** Notes what was done, at once. */
    public synchronized void note(Entry entry) {
        own.put(entry.place(), entry);
        // Behind a line that was cut short a new one begins all the same.
        byte[] line = ("\n" + entry.line() + "\n").getBytes(StandardCharsets.UTF_8);
        if (!Files.isDirectory(folder)) {
            // Only refusals so far: no folder is made for those alone, and the end of the run writes them beside
            // results.
            return;
        }
        try {
            Files.write(file, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND, LinkOption.NOFOLLOW_LINKS);
        } catch (IOException e) {
            // The end of the run writes it, or tells that it cannot.
        }
    }

    /** Tells whether the file has a content already. */
    public boolean isTidy(byte[] content) {
        return ContentHash.of(content).equals(hash(file));
    }

    /** Tells whether there is a folder for results: refusals alone make none. */
    public boolean hasFolder() {
        return Files.isDirectory(folder);
    }

    /** Returns the file of this run. */
    public Path file() {
        return file;
    }

    /**
     * Returns the file as it is without what has been overtaken: one line a place, sorted, so that it is the same in
     * whatever order the tunes were done. What other runs have noted there meanwhile is kept; null if nothing is noted.
     */
    public synchronized byte @Nullable [] tidied() {
        Ledger now = open(folder, file.getFileName().toString().substring(NAME.length()));
        SortedMap<String, Entry> all = new TreeMap<>(now.own);
        all.putAll(own);
        StringBuilder text = new StringBuilder();
        all.values().forEach(entry -> text.append(entry.line()).append('\n'));
        return all.isEmpty() ? null : text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
