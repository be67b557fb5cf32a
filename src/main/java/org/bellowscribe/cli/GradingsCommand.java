package org.bellowscribe.cli;

import java.util.Locale;
import org.bellowscribe.difficulty.grading.Grade;
import org.bellowscribe.difficulty.grading.Grading;
import org.bellowscribe.difficulty.grading.GradingLibrary;
import org.bellowscribe.difficulty.grading.Term;

/** Shows what the terms of difficulty weigh. */
final class GradingsCommand extends LibraryCommand<Grading> {

    GradingsCommand() {
        super(GradingLibrary.library());
    }

    @Override
    public String summary() {
        return "Alone or with list it lists the gradings; show prints what each term of difficulty weighs and the names of"
                + " the grades; check looks for what is wrong in a file.";
    }

    @Override
    String list() {
        StringBuilder text = new StringBuilder();
        GradingLibrary.library()
                .all()
                .forEach(grading -> text.append("  %-18s %s%n".formatted(grading.id(), grading.summary())));
        return text.toString();
    }

    @Override
    String show(Grading shown) {
        StringBuilder text = new StringBuilder("%s%n  %s%n".formatted(shown.id(), shown.summary()));
        for (Term term : Term.values()) {
            text.append(String.format(
                    Locale.ROOT, "  %-38s %6.3f points for 1 %s%n", term.label(), shown.weight(term), term.unit()));
        }
        for (Grade grade : shown.grades()) {
            text.append(String.format(
                    Locale.ROOT, "  grade %d from %4.1f points: %s%n", grade.number(), grade.from(), grade.name()));
        }
        return text.toString();
    }

    @Override
    String title(Grading shown) {
        return shown.id();
    }
}
