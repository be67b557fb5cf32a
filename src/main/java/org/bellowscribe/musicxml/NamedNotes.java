package org.bellowscribe.musicxml;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.jspecify.annotations.Nullable;

/** A copy of a score for a program that shows it: some of its notes bear names, and it is compressed. */
public final class NamedNotes {

    private static final String CONTAINER = "<?xml version=\"1.0\" encoding=\"UTF-8\"?><container><rootfiles>"
            + "<rootfile full-path=\"score.musicxml\"/></rootfiles></container>";
    private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 1, 1, 0, 0);

    private NamedNotes() {}

    /**
     * Returns the copy as a compressed score in UTF-8; the same score always becomes the same bytes.
     *
     * @param document the score
     * @param ids by 0-based place among all notes in measures, the {@code id} that a note gets in place of its own
     */
    public static byte[] compressed(ScoreDocument document, Map<Integer, String> ids) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            put(zip, "META-INF/container.xml", CONTAINER);
            put(zip, "score.musicxml", inUtf8(named(document.text(), ids)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(ALWAYS);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    // Whatever encoding the file declares, the copy is in UTF-8, which needs no declaration.
    private static String inUtf8(String text) {
        int end = text.startsWith("<?xml") ? text.indexOf("?>") : -1;
        return end < 0 ? text : text.substring(end + 2).stripLeading();
    }

    private static String named(String text, Map<Integer, String> ids) {
        Naming naming = new Naming(text, ids);
        try {
            XmlWalk.over(text, naming);
        } catch (DiagnosedException e) {
            throw new IllegalStateException("Elements that nested before no longer do.", e);
        }
        return naming.finished();
    }

    /** Writes the text anew, with names. */
    private static final class Naming implements XmlVisitor {

        private static final String NOTE = "<note";

        private final String text;
        private final Map<Integer, String> ids;
        private final StringBuilder named;
        private int done;
        private int notes;

        Naming(String text, Map<Integer, String> ids) {
            this.text = text;
            this.ids = ids;
            named = new StringBuilder(text.length() + 16 * ids.size());
        }

        @Override
        public void start(XmlElement element) {
            if (!NoteAnchors.isNote(element)) {
                return;
            }
            String id = ids.get(notes++);
            if (id != null) {
                int behind = element.start() + NOTE.length();
                String tag = text.substring(behind, element.contentStart());
                named.append(text, done, behind).append(" id=\"").append(id).append('"');
                named.append(without(element.attribute("id"), tag));
                done = element.contentStart();
            }
        }

        private static String without(@Nullable String own, String tag) {
            return own == null ? tag : tag.replaceFirst("\\sid\\s*=\\s*(\"[^\"]*\"|'[^']*')", "");
        }

        @Override
        public void end(XmlElement element) {}

        String finished() {
            return named.append(text, done, text.length()).toString();
        }
    }
}
