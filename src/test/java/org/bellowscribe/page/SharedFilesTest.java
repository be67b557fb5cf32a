package org.bellowscribe.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SharedFilesTest {

    private static final Map<String, byte[]> FILES = SharedFiles.all();

    @Test
    void allOfThemAreEightMegabytesAtMost() {
        int bytes = FILES.values().stream().mapToInt(file -> file.length).sum();
        assertTrue(bytes <= 8_000_000, bytes + " bytes");
    }

    @Test
    void ourScriptIsThirtyKilobytesAtMost() {
        int bytes = FILES.get(SharedFiles.SCRIPT).length;
        assertTrue(bytes <= 30_000, bytes + " bytes");
    }

    /** The file dist/verovio-toolkit-wasm.js of the npm package verovio 6.3.0. */
    @Test
    void theEngraverIsUnchanged() throws Exception {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(FILES.get(SharedFiles.ENGRAVER));
        assertEquals(
                "d794119cd5ea83a3e835849945f0289c91ac2bac427f4aa312c7010a800b46bd",
                HexFormat.of().formatHex(digest));
    }

    @Test
    void itsLicenceStandsBesideIt() {
        String licence = new String(FILES.get("shared/verovio-licence.txt"), StandardCharsets.UTF_8);
        assertTrue(licence.contains("GNU LESSER GENERAL PUBLIC LICENSE"));
    }

    @Test
    void ourScriptLoadsNothing() {
        String script = new String(FILES.get(SharedFiles.SCRIPT), StandardCharsets.UTF_8);
        for (String word : new String[] {"fetch(", "import ", "import(", "XMLHttpRequest", "audioWorklet", "eval("}) {
            assertEquals(-1, script.indexOf(word), word);
        }
    }
}
