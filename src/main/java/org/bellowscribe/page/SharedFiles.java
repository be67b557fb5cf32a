package org.bellowscribe.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/** What all pages of a report share, written once: our script and style sheet, and the engraver Verovio, unchanged, with its licence. */
public final class SharedFiles {

    /** Our style sheet, from the folder of the index. */
    public static final String STYLE = "shared/page.css";

    /** Our script. */
    public static final String SCRIPT = "shared/page.js";

    /** Verovio. */
    public static final String ENGRAVER = "shared/verovio-toolkit-wasm.js";

    private static final Map<String, String> RESOURCES = Map.of(
            STYLE,
            "page.css",
            SCRIPT,
            "page.js",
            ENGRAVER,
            "verovio-toolkit-wasm.js",
            "shared/verovio-licence.txt",
            "/META-INF/licenses/LGPL-3.0.txt",
            "shared/verovio-licence-gpl.txt",
            "/META-INF/licenses/GPL-3.0.txt");

    private SharedFiles() {}

    /** Returns the bytes of each file by its place below the folder of the index. */
    public static Map<String, byte[]> all() {
        Map<String, byte[]> all = new LinkedHashMap<>();
        RESOURCES.keySet().stream().sorted().forEach(name -> all.put(name, read(name)));
        return all;
    }

    private static byte[] read(String name) {
        String resource = RESOURCES.getOrDefault(name, "");
        try (InputStream in = SharedFiles.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("The file %s must be in the jar.".formatted(resource));
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
