package org.bellowscribe.cli;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.io.monitor.FileAlterationListenerAdaptor;
import org.apache.commons.io.monitor.FileAlterationObserver;
import org.jspecify.annotations.Nullable;

/** Folders and single files, looked at again and again for what has changed. */
final class FolderWatch {

    private static final List<String> ENDINGS = List.of(".musicxml", ".xml", ".mxl");

    private final @Nullable Path results;
    private final List<FileAlterationObserver> observers = new ArrayList<>();
    private final Set<Path> changed = new LinkedHashSet<>();

    /**
     * Begins to watch.
     *
     * @param folders folders in which, and below which, every score and every file of XML counts
     * @param files single files elsewhere
     * @param results the folder for results, which does not count; or null
     */
    FolderWatch(Set<Path> folders, Set<Path> files, @Nullable Path results) {
        this.results = results == null ? null : absolute(results);
        for (Path folder : folders) {
            observe(folder, this::counts);
        }
        Map<Path, Set<String>> byFolder = new LinkedHashMap<>();
        for (Path file : files) {
            Path folder = absolute(file).getParent();
            if (folder != null) {
                byFolder.computeIfAbsent(folder, any -> new TreeSet<>()).add(String.valueOf(file.getFileName()));
            }
        }
        byFolder.forEach((folder, names) -> observe(folder, file -> names.contains(file.getName())));
    }

    private static Path absolute(Path path) {
        return path.toAbsolutePath().normalize();
    }

    private boolean counts(File file) {
        String name = file.getName().toLowerCase(Locale.ROOT);
        if (name.startsWith(".")) {
            return false;
        }
        return file.isDirectory()
                ? !absolute(file.toPath()).equals(results)
                : ENDINGS.stream().anyMatch(name::endsWith);
    }

    private void observe(Path folder, java.io.FileFilter filter) {
        try {
            FileAlterationObserver observer = FileAlterationObserver.builder()
                    .setFile(absolute(folder).toFile())
                    .setFileFilter(filter)
                    .get();
            observer.addListener(new FileAlterationListenerAdaptor() {
                @Override
                public void onFileCreate(File file) {
                    changed.add(file.toPath());
                }

                @Override
                public void onFileChange(File file) {
                    changed.add(file.toPath());
                }

                @Override
                public void onFileDelete(File file) {
                    changed.add(file.toPath());
                }
            });
            observer.initialize();
            observers.add(observer);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    /** Returns the absolute paths of files that were written, made or removed since it was asked for the last time. */
    Set<Path> changed() {
        changed.clear();
        observers.forEach(FileAlterationObserver::checkAndNotify);
        return new LinkedHashSet<>(changed);
    }
}
