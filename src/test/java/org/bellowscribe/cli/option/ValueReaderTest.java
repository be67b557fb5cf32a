package org.bellowscribe.cli.option;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What values of options are taken, and what is said of others. */
class ValueReaderTest {

    private static void assertNotTaken(ValueReader<?> reader, String text, String message) {
        UsageException thrown = assertThrows(UsageException.class, () -> reader.read("x", text));
        assertEquals(message, thrown.lines());
    }

    @Test
    void wholeNumbersWithinTheirLimits() throws UsageException {
        WholeNumber percent = new WholeNumber(-5, 50, "percent");
        assertEquals(-5, percent.read("x", "-5"));
        assertEquals(50, percent.read("x", "+50"));
        assertNotTaken(percent, "51", "--x takes a whole number of percent from -5 to 50, not 51.");
        assertNotTaken(percent, "2.5", "--x takes a whole number of percent from -5 to 50, not 2.5.");
        assertNotTaken(percent, "99999999999", "--x takes a whole number of percent from -5 to 50, not 99999999999.");
    }

    @Test
    void oneOfAFewWords() throws UsageException {
        Choice<Integer> choice = new Choice<Integer>().or("one", 1).or("two", 2).or("three", 3);
        assertEquals(2, choice.read("x", "two"));
        assertNotTaken(choice, "four", "--x takes one, two or three, not four.");
    }

    @Test
    void aNumberOrAWord() throws UsageException {
        NumberOr reader = new NumberOr("auto", new WholeNumber(-24, 24));
        assertEquals(OptionalInt.empty(), reader.read("x", "auto"));
        assertEquals(OptionalInt.of(-7), reader.read("x", "-7"));
        assertNotTaken(reader, "25", "--x takes auto or a whole number from -24 to 24, not 25.");
    }

    @Test
    void wordsWithCommasBetween() throws UsageException {
        WordList reader = new WordList(List.of("part", "sheet"));
        assertEquals(List.of("sheet", "part"), reader.read("x", "sheet, part"));
        assertNotTaken(reader, "part,", "--x takes part, sheet or part,sheet, not part,.");
    }

    @Test
    void pathsButNotStandardOutput() throws UsageException {
        FilePath reader = new FilePath();
        assertEquals(Path.of("a/b"), reader.read("x", "a/b"));
        assertNotTaken(
                reader,
                "-",
                "--x takes a path, and - is standard output.%n  Maybe leave --x out, or write ./-.".formatted());
    }
}
