package org.bellowscribe.batch;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystemException;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.StandardOpenOption;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The files of this computer, of which one change goes wrong: opening a file to write it, a write, a close, a move, making
 * a folder, or a removal. Reading never does.
 */
final class FaultyFiles extends FileSystemProvider {

    private final FileSystemProvider real;
    private final FileSystem system;
    private final int faulty;
    private final List<String> changes = new ArrayList<>();

    /**
     * Creates them.
     *
     * @param faulty which change goes wrong, from 0; -1 for none
     */
    FaultyFiles(Path somewhere, int faulty) {
        real = somewhere.getFileSystem().provider();
        system = new Faulty(somewhere.getFileSystem());
        this.faulty = faulty;
    }

    /** Returns the changes that were tried, in their order. */
    List<String> changes() {
        return changes;
    }

    /** Returns a path whose changes may go wrong. */
    Path faulty(Path path) {
        return (Path) Proxy.newProxyInstance(
                FaultyFiles.class.getClassLoader(), new Class<?>[] {Path.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("getFileSystem")) {
                        return system;
                    }
                    Object[] bare = arguments == null ? new Object[0] : arguments.clone();
                    for (int i = 0; i < bare.length; i++) {
                        bare[i] = bare[i] instanceof Path each ? bare(each) : bare[i];
                    }
                    try {
                        Object result = method.invoke(path, bare);
                        return result instanceof Path each ? faulty(each) : result;
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
    }

    private Path bare(Path path) {
        return path.getFileSystem() == system ? Path.of(path.toString()) : path;
    }

    private synchronized void change(String what, Path path) throws IOException {
        changes.add(what);
        if (changes.size() - 1 == faulty) {
            throw new FileSystemException(path.toString(), null, "No space left on device");
        }
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        boolean writes = options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND);
        if (!writes) {
            return real.newByteChannel(bare(path), options, attributes);
        }
        change("open", path);
        return new FaultyChannel(this::change, path, real.newByteChannel(bare(path), options, attributes));
    }

    /** A file that is written. */
    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        change("folder", folder);
        real.createDirectory(bare(folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
        change("delete", path);
        real.delete(bare(path));
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        change("move", to);
        real.move(bare(from), bare(to), options);
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) throws IOException {
        change("copy", to);
        real.copy(bare(from), bare(to), options);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        DirectoryStream<Path> stream = real.newDirectoryStream(bare(folder), filter);
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                List<Path> paths = new ArrayList<>();
                stream.forEach(path -> paths.add(faulty(path)));
                return paths.iterator();
            }

            @Override
            public void close() throws IOException {
                stream.close();
            }
        };
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        real.checkAccess(bare(path), modes);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return real.readAttributes(bare(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return real.readAttributes(bare(path), attributes, options);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        return real.getFileAttributeView(bare(path), type, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        real.setAttribute(bare(path), attribute, value, options);
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return real.isSameFile(bare(one), bare(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return real.isHidden(bare(path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return real.getFileStore(bare(path));
    }

    @Override
    public String getScheme() {
        return "faulty";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return system;
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }

    /** The file system of such paths. */
    private final class Faulty extends FileSystem {

        private final FileSystem whole;

        Faulty(FileSystem whole) {
            this.whole = whole;
        }

        @Override
        public FileSystemProvider provider() {
            return FaultyFiles.this;
        }

        @Override
        public void close() {
            // It is never closed.
        }

        @Override
        public boolean isOpen() {
            return true;
        }

        @Override
        public boolean isReadOnly() {
            return false;
        }

        @Override
        public String getSeparator() {
            return whole.getSeparator();
        }

        @Override
        public Iterable<Path> getRootDirectories() {
            return whole.getRootDirectories();
        }

        @Override
        public Iterable<FileStore> getFileStores() {
            return whole.getFileStores();
        }

        @Override
        public Set<String> supportedFileAttributeViews() {
            return whole.supportedFileAttributeViews();
        }

        @Override
        public Path getPath(String first, String... more) {
            return faulty(whole.getPath(first, more));
        }

        @Override
        public PathMatcher getPathMatcher(String pattern) {
            PathMatcher matcher = whole.getPathMatcher(pattern);
            return path -> matcher.matches(bare(path));
        }

        @Override
        public UserPrincipalLookupService getUserPrincipalLookupService() {
            return whole.getUserPrincipalLookupService();
        }

        @Override
        public WatchService newWatchService() {
            throw new UnsupportedOperationException();
        }
    }
}
