package org.bellowscribe.book;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;

/** Reads a book file, in the form of {@code schemas/book.xsd}. */
public final class BookFile {

    /** Name of the root element. */
    public static final String ROOT = "book";

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("book.xsd");

    private BookFile() {}

    /**
     * A book, right or wrong.
     *
     * @param book what is in the file
     * @param problems entries that contradict each other, with line and column; empty if none do
     */
    public record Examined(Book book, List<Diagnostic> problems) {
        /** Copies the list. */
        public Examined {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a book.
     *
     * @param usualInstrument the instrument of a book that names none
     * @throws DiagnosedException with line and column, if the file is against the schema
     * @throws IOException if the stream cannot be read
     */
    public static Examined read(InputStream stream, String usualInstrument) throws DiagnosedException, IOException {
        DefinitionSchema.Examined examined = SCHEMA.examine(stream);
        DefinitionElement root = examined.root();
        if (!root.name().equals(ROOT)) {
            throw new DiagnosedException(Diagnostic.error(
                    DiagnosticCode.BAD_DEFINITION,
                    root.place(),
                    "The root element is <%s>, but a book file holds one <book>.".formatted(root.name()),
                    "Maybe another file is meant; the command book new FOLDER begins a book file."));
        }
        if (!examined.remarks().isEmpty()) {
            throw new DiagnosedException(examined.remarks());
        }
        Book book = book(root, usualInstrument);
        return new Examined(book, new BookCheck(book).problems());
    }

    private static Book book(DefinitionElement root, String usualInstrument) {
        List<BookInstrument> instruments = new ArrayList<>();
        root.children("instrument").forEach(element -> instruments.add(instrument(element)));
        if (instruments.isEmpty()) {
            instruments.add(BookInstrument.usual(usualInstrument, root.place()));
        }
        return new Book(
                root.required("title"),
                "by-learning".equals(root.attribute("order")),
                root.required("folder"),
                prints(root.attribute("print") == null ? "new notes" : root.required("print")),
                root.children("text").stream()
                        .map(element -> new BookText(words(element, "heading"), element.text()))
                        .toList(),
                instruments,
                root.children("tune").stream().map(BookFile::tune).toList(),
                Wishes.of(root),
                root.place());
    }

    private static Set<Book.Print> prints(String list) {
        Set<Book.Print> prints = EnumSet.noneOf(Book.Print.class);
        for (String word : list.split(" ", -1)) {
            if (!word.equals("none")) {
                prints.add(Book.Print.valueOf(word.toUpperCase(Locale.ROOT)));
            }
        }
        return prints;
    }

    private static BookInstrument instrument(DefinitionElement element) {
        String id = element.required("id");
        String folder = element.attribute("folder");
        return new BookInstrument(
                id, folder == null ? BookInstrument.folderOf(id) : folder, Wishes.of(element), element.place());
    }

    private static BookTune tune(DefinitionElement element) {
        return new BookTune(
                element.required("file"),
                words(element, "title"),
                element.attribute("position") == null ? 0 : element.number("position"),
                element.children("note").stream().map(DefinitionElement::text).toList(),
                Wishes.of(element),
                element.children("on").stream()
                        .map(on -> new BookTune.Elsewise(
                                on.required("instrument"), on.says("leave-out"), Wishes.of(on), on.place()))
                        .toList(),
                element.place());
    }

    private static String words(DefinitionElement element, String attribute) {
        return Objects.requireNonNullElse(element.attribute(attribute), "");
    }
}
