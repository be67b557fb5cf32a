package org.bellowscribe.difficulty.grading;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.definition.Library;
import org.bellowscribe.definition.LibraryFiles;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;

/** The gradings that come with the tool, and the way to those of a user. */
public final class GradingLibrary {

    /** Id of the grading that is meant when nobody names one. */
    public static final String DEFAULT_ID = "second-year";

    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("grading.xsd");
    private static final LibraryFiles FILES = new LibraryFiles("gradings", SCHEMA);
    private static final Library<Grading> LIBRARY =
            new Library<>("grading", List.of(DEFAULT_ID), GradingLibrary::known, GradingLibrary::read);

    /** Read when it is first asked for. */
    private static final class Holder {
        static final Grading USUAL = known(DEFAULT_ID);
    }

    private GradingLibrary() {}

    /** Returns the library. */
    public static Library<Grading> library() {
        return LIBRARY;
    }

    /** Returns the grading that is meant when nobody names one. */
    public static Grading usual() {
        return Holder.USUAL;
    }

    private static Grading known(String id) {
        return FILES.make(id, GradingLibrary::grading);
    }

    private static Grading read(InputStream file) throws DiagnosedException, IOException {
        return grading(SCHEMA.read(file));
    }

    private static Grading grading(DefinitionElement root) throws DiagnosedException {
        Map<Term, Double> weights = new EnumMap<>(Term.class);
        for (Term term : Term.values()) {
            for (DefinitionElement element : root.children("term")) {
                if (element.required("id").equals(term.id())) {
                    weights.put(term, Double.valueOf(element.required("points")));
                }
            }
        }
        DefinitionElement summary = root.child("summary");
        return new Grading(root.required("id"), summary == null ? "" : summary.text(), weights, grades(root));
    }

    private static List<Grade> grades(DefinitionElement root) throws DiagnosedException {
        List<Grade> grades = new ArrayList<>();
        for (DefinitionElement element : root.children("grade")) {
            double from = Double.parseDouble(element.required("from"));
            if (!grades.isEmpty() && from <= grades.get(grades.size() - 1).from()) {
                throw new DiagnosedException(Diagnostic.error(
                        DiagnosticCode.BAD_DEFINITION,
                        element.place(),
                        "Grade %d begins at %s points, no later than the one before."
                                .formatted(grades.size() + 1, element.required("from")),
                        "Maybe write more points than %s."
                                .formatted(grades.get(grades.size() - 1).from())));
            }
            grades.add(new Grade(grades.size() + 1, element.required("name"), from));
        }
        return grades;
    }
}
