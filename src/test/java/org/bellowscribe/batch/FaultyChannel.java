package org.bellowscribe.batch;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;

/** A channel whose every write and close may fail: of a full disk the first half of the bytes is taken. */
final class FaultyChannel implements SeekableByteChannel {

    /** What may fail before something is changed. */
    @FunctionalInterface
    interface Fault {
        void change(String what, Path path) throws IOException;
    }

    private final Fault fault;

    private final Path path;
    private final SeekableByteChannel channel;

    FaultyChannel(Fault fault, Path path, SeekableByteChannel channel) {
        this.fault = fault;
        this.path = path;
        this.channel = channel;
    }

    @Override
    public int write(ByteBuffer bytes) throws IOException {
        // A full disk takes the first half.
        int half = bytes.remaining() / 2;
        ByteBuffer first = bytes.duplicate();
        first.limit(first.position() + half);
        channel.write(first);
        fault.change("write", path);
        bytes.position(bytes.position() + half);
        return half + channel.write(bytes);
    }

    @Override
    public void close() throws IOException {
        boolean open = channel.isOpen();
        channel.close();
        if (open) {
            fault.change("close", path);
        }
    }

    @Override
    public int read(ByteBuffer bytes) throws IOException {
        return channel.read(bytes);
    }

    @Override
    public long position() throws IOException {
        return channel.position();
    }

    @Override
    public SeekableByteChannel position(long position) throws IOException {
        channel.position(position);
        return this;
    }

    @Override
    public long size() throws IOException {
        return channel.size();
    }

    @Override
    public SeekableByteChannel truncate(long size) throws IOException {
        channel.truncate(size);
        return this;
    }

    @Override
    public boolean isOpen() {
        return channel.isOpen();
    }
}
