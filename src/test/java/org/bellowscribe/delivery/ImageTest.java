package org.bellowscribe.delivery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The application image, run as a user would; after {@code mvn -Pimage package}. */
@Tag("image")
class ImageTest {

    private static final Path HERE = Path.of("").toAbsolutePath();
    private static final String TUNE =
            HERE.resolve("samples/book/two-ducks.musicxml").toString();
    /** Java ends at once if it cannot use the archive. */
    private static final Map<String, String> ONLY_WITH_ARCHIVE = Map.of("BELLOWSCRIBE_JAVA_OPTIONS", "-Xshare:on");

    @TempDir
    Path folder;

    private static void copy(Path from, Path to) throws IOException, InterruptedException {
        assertEquals(
                0,
                Delivered.run(HERE, Map.of(), List.of("cp", "-a", from.toString(), to.toString()))
                        .code());
    }

    @Test
    void itMarksATuneWithItsOwnJavaAndArchive() throws Exception {
        String launcher = Delivered.image().resolve("bin/bellowscribe").toString();
        Delivered.Ended ended =
                Delivered.run(folder, ONLY_WITH_ARCHIVE, Delivered.words(launcher, "mark", TUNE, "--out", "marked"));
        assertEquals(0, ended.code(), ended.out());
        assertTrue(Files.exists(folder.resolve("marked/two-ducks.musicxml")));
    }

    @Test
    void itMayBeMovedAndLinkedTo() throws Exception {
        Path moved = folder.resolve("another place");
        copy(Delivered.image(), moved);
        Path link = Files.createSymbolicLink(folder.resolve("bellows"), Path.of("another place/bin/bellowscribe"));
        Delivered.Ended ended = Delivered.run(folder, ONLY_WITH_ARCHIVE, Delivered.words(link.toString(), "--version"));
        assertEquals(new Delivered.Ended(0, "Bellowscribe 0.1.0\n"), ended);
    }

    @Test
    void exitCodesAndWordsGoThroughTheLauncher() throws Exception {
        String launcher = Delivered.image().resolve("bin/bellowscribe").toString();
        Delivered.Ended ended = Delivered.run(folder, Map.of(), Delivered.words(launcher, "mark", "no such tune"));
        assertEquals(2, ended.code());
        Delivered.Ended strange = Delivered.run(folder, Map.of(), Delivered.words(launcher, "$HOME * \"x\""));
        assertTrue(strange.out().startsWith("There is no command $HOME * \"x\"."), strange.out());
    }

    /** As on other systems: a Java of the user's, and an archive from the first run on. */
    @Test
    void withoutARuntimeTheFirstRunMakesTheArchive() throws Exception {
        Path plain = Files.createDirectories(folder.resolve("plain"));
        copy(Delivered.image().resolve("bin"), plain);
        Files.createDirectories(plain.resolve("lib"));
        copy(Delivered.image().resolve("lib/bellowscribe.jar"), plain.resolve("lib"));
        String launcher = plain.resolve("bin/bellowscribe").toString();
        Map<String, String> cache = Map.of(
                "XDG_CACHE_HOME", folder.resolve("cache").toString(), "JAVA_HOME", System.getProperty("java.home"));
        List<String> words = Delivered.words(launcher, "--version");
        assertEquals(new Delivered.Ended(0, "Bellowscribe 0.1.0\n"), Delivered.run(folder, cache, words));
        assertTrue(Files.exists(folder.resolve("cache/bellowscribe/bellowscribe.jsa")));
        Map<String, String> only = new HashMap<>(cache);
        only.putAll(ONLY_WITH_ARCHIVE);
        assertEquals(new Delivered.Ended(0, "Bellowscribe 0.1.0\n"), Delivered.run(folder, only, words));
    }

    @Test
    void completionsManualAndPartsAreThere() throws Exception {
        Path share = Delivered.image().resolve("share");
        for (String file : List.of(
                "bash-completion/completions/bellowscribe",
                "zsh/site-functions/_bellowscribe",
                "fish/vendor_completions.d/bellowscribe.fish",
                "bellowscribe.ps1",
                "man/man1/bellowscribe.1")) {
            assertTrue(Files.size(share.resolve(file)) > 1000, file);
        }
        String parts = Files.readString(Delivered.image().resolve("lib/bellowscribe.cdx.json"));
        for (String part : List.of("proxymusic", "jaxb-runtime", "commons-cli", "ojalgo")) {
            assertTrue(parts.contains("\"name\" : \"" + part + "\""), part);
        }
    }
}
