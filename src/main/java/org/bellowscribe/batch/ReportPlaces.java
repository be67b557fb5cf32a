package org.bellowscribe.batch;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Where the pages of a run go: as the files lie to each other, below the deepest folder that holds them all; each page under
 * the name of its file without ending, or with it where another page has that name.
 */
final class ReportPlaces {

    private ReportPlaces() {}

    /** Returns the place of the page of each file, without ending, with slashes between folders. */
    static Map<Source, String> of(List<Source> sources) {
        Map<Source, String> places = new HashMap<>();
        Set<String> taken = new HashSet<>();
        Path common = common(sources);
        for (Source source : sources) {
            String folders = folders(common, source.file());
            String place = folders + source.stem();
            for (int i = 1; !taken.add(place.toLowerCase(Locale.ROOT)); i++) {
                place = folders + source.name() + (i == 1 ? "" : "-" + i);
            }
            places.put(source, place);
        }
        return places;
    }

    private static Path folder(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        Path folder = whole.getParent();
        return folder == null ? whole : folder;
    }

    private static Path common(List<Source> sources) {
        Path common = null;
        for (Source source : sources) {
            Path folder = folder(source.file());
            Path shared = common == null ? folder : common;
            while (shared.getParent() != null && !folder.startsWith(shared)) {
                shared = shared.getParent();
            }
            common = shared;
        }
        return common == null ? Path.of("") : common;
    }

    // On computers with several roots there may be no common folder: then names alone must do.
    private static String folders(Path common, Path file) {
        Path folder = folder(file);
        if (!folder.startsWith(common)) {
            return "";
        }
        StringBuilder folders = new StringBuilder();
        for (Path each : common.relativize(folder)) {
            folders.append(each.toString().isEmpty() ? "" : each + "/");
        }
        return folders.toString();
    }
}
