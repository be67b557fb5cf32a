package org.bellowscribe.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchTest {

    @TempDir
    Path folder;

    private Source source(String name) {
        return new Source(folder.resolve(name), name, folder.resolve("out").resolve(name));
    }

    @Test
    void resultsComeInTheOrderOfTheFilesThoughTheFirstIsDoneLast() {
        CountDownLatch second = new CountDownLatch(1);
        Job job = source -> {
            if (source.shown().equals("a")) {
                await(second);
            } else {
                second.countDown();
            }
            return new Result(source, true, null, List.of());
        };
        List<String> told = new ArrayList<>();
        Batch.run(
                List.of(source("a"), source("b")),
                job,
                2,
                result -> told.add(result.source().shown()));
        assertEquals(List.of("a", "b"), told);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void fileThatFailsIsSaidToLeaveItsOlderResult() throws IOException {
        Files.writeString(folder.resolve("a"), "no score");
        Files.writeString(folder.resolve("b"), "no score");
        Files.createDirectories(folder.resolve("out"));
        Files.writeString(folder.resolve("out/a"), "older");
        Job job = Jobs.strip();
        List<DiagnosticCode> codes = job.run(source("a")).diagnostics().stream()
                .map(Diagnostic::code)
                .toList();
        assertEquals(List.of(DiagnosticCode.NOT_XML, DiagnosticCode.OLDER_RESULT), codes);
        assertEquals("older", Files.readString(folder.resolve("out/a")));
        assertEquals(1, job.run(source("b")).diagnostics().size());
    }

    @Test
    void jobThatBreaksIsAResultLikeAnyOther() throws IOException {
        Files.writeString(folder.resolve("a"), "x");
        Job job = SafeJob.of((source, bytes) -> {
            throw new IllegalStateException("what should not be");
        });
        Result result = job.run(source("a"));
        assertFalse(result.done());
        Diagnostic error = result.firstError();
        assertEquals(DiagnosticCode.INTERNAL, error.code());
        assertTrue(error.text().contains("what should not be"), error.text());
    }

    @Test
    void fileThatIsGoneIsAResultLikeAnyOther() {
        Job job = SafeJob.of((source, bytes) -> new Result(source, true, null, List.of()));
        Diagnostic error = job.run(source("gone")).firstError();
        assertEquals(DiagnosticCode.UNREADABLE, error.code());
        assertEquals("The file cannot be read (there is no such file or folder).", error.text());
    }
}
