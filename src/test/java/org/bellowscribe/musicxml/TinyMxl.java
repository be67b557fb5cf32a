package org.bellowscribe.musicxml;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Builds and reads small compressed scores. */
final class TinyMxl {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final ZipOutputStream zip = new ZipOutputStream(bytes);

    /** Returns a usual compressed score. */
    static byte[] of(String score) {
        return new TinyMxl().container("score.xml").deflated("score.xml", score).bytes();
    }

    TinyMxl container(String path) {
        return deflated(
                "META-INF/container.xml",
                "<container><rootfiles><rootfile full-path=\"" + path + "\"/></rootfiles></container>");
    }

    TinyMxl level(int level) {
        zip.setLevel(level);
        return this;
    }

    TinyMxl comment(String comment) {
        zip.setComment(comment);
        return this;
    }

    /** Adds an entry whose sizes follow its bytes. */
    TinyMxl deflated(String name, String content) {
        return entry(new ZipEntry(name), content.getBytes(StandardCharsets.UTF_8));
    }

    TinyMxl stored(String name, String content) {
        byte[] data = content.getBytes(StandardCharsets.UTF_8);
        ZipEntry entry = new ZipEntry(name);
        CRC32 crc = new CRC32();
        crc.update(data);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(data.length);
        entry.setCrc(crc.getValue());
        return entry(entry, data);
    }

    TinyMxl entry(ZipEntry entry, byte[] data) {
        try {
            entry.setTime(1_700_000_000_000L);
            zip.putNextEntry(entry);
            zip.write(data);
            zip.closeEntry();
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    byte[] bytes() {
        try {
            zip.close();
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the entries by name in the order of the file, read as a stream, which heeds the local headers. */
    static Map<String, String> read(byte[] mxl) {
        Map<String, String> entries = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(mxl))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                entries.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
            return entries;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
