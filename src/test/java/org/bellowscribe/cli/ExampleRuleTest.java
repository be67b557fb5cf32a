package org.bellowscribe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rule of DEVELOPERS.md, compiled, put into a jar and run as a user would. */
class ExampleRuleTest {

    private static final String SERVICE = "META-INF/services/org.bellowscribe.solver.Rule";

    @TempDir
    Path folder;

    private static String source() throws IOException {
        String text = Files.readString(Path.of("DEVELOPERS.md"));
        String block = text.substring(text.indexOf("    package mybox;"), text.indexOf("\nCompile it with"));
        return block.lines().map(line -> line.replaceFirst("^ {4}", "")).collect(Collectors.joining("\n"));
    }

    private Path jar(String service) throws IOException {
        Path source = folder.resolve("StickingButton.java");
        Files.writeString(source, source());
        int code = ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, "-proc:none", "-d", folder.toString(), source.toString());
        assertEquals(0, code);
        Path jar = folder.resolve("my-box.jar");
        String name = "mybox/StickingButton.class";
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out)) {
            entries.putNextEntry(new JarEntry(name));
            entries.write(Files.readAllBytes(folder.resolve(name)));
            entries.putNextEntry(new JarEntry(SERVICE));
            entries.write(service.getBytes(StandardCharsets.UTF_8));
        }
        return jar;
    }

    private Path manner() throws IOException {
        return Files.writeString(folder.resolve("my-box.xml"), """
                <manner id="my-box" based-on="along-the-row">
                  <summary>Without the button that sticks.</summary>
                  <rule id="sticking-button"><points case="each">50</points></rule>
                </manner>
                """);
    }

    private String run(Path jar, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
        command.add(System.getProperty("java.class.path") + File.pathSeparator + jar);
        command.add("org.bellowscribe.cli.Main");
        command.addAll(List.of(words));
        Path out = folder.resolve("out.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        process.waitFor();
        return Files.readString(out, StandardCharsets.UTF_8);
    }

    @Test
    void ruleOfOnesOwnIsListedAndDecides() throws Exception {
        Path jar = jar("mybox.StickingButton\n");
        String shown = run(jar, "manners", "show", manner().toString());
        assertTrue(shown.contains("sticking-button: Button 4 of row 2 sticks.\n  each 50 (0)"), shown);
        String usual = record(jar, "along-the-row");
        String own = record(jar, manner().toString());
        assertTrue(uses(own) < uses(usual), uses(own) + " after " + uses(usual));
        assertFalse(usual.contains("sticking-button"), usual);
        assertTrue(own.contains("sticking-button"), own);
    }

    private static int uses(String steps) {
        return steps.split("\\[\"2\\.4\"\\]", -1).length - 1;
    }

    private String record(Path jar, String manner) throws IOException, InterruptedException {
        String tune = "samples/book/the-ferry-bell.musicxml";
        String out = run(
                jar,
                "mark",
                tune,
                "--record",
                "--manner",
                manner,
                "--out",
                folder.toString(),
                "--marks",
                "buttons,air");
        assertTrue(out.contains("1 tune marked"), out);
        return Files.readString(folder.resolve("the-ferry-bell.record.json"));
    }

    @Test
    void jarWithAMisspelledServiceIsNamed() throws Exception {
        String out = run(jar("mybox.SlickingButton\n"), "manners");
        assertTrue(out.startsWith("A plug-in on the class path cannot be used:"), out);
        assertTrue(out.contains("mybox.SlickingButton"), out);
    }
}
