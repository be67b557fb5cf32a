package org.bellowscribe.solver.manner;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.definition.DefinitionSchema;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Rule;
import org.bellowscribe.solver.RuleBook;
import org.jspecify.annotations.Nullable;

/** The manners of playing that come with the tool. */
public final class MannerLibrary {

    /** Id of the manner that is meant when nobody names one. */
    public static final String DEFAULT_ID = "along-the-row";

    private static final String FOLDER = "/org/bellowscribe/shared/manners/";
    private static final List<String> IDS = List.of(DEFAULT_ID);
    private static final DefinitionSchema SCHEMA = DefinitionSchema.of("manner.xsd");

    private MannerLibrary() {}

    /** Returns the ids of the library. */
    public static List<String> ids() {
        return IDS;
    }

    /**
     * Returns a manner of the library.
     *
     * @throws IllegalArgumentException if the library has none of that id
     */
    public static Manner of(String id) {
        try (InputStream stream = MannerLibrary.class.getResourceAsStream(FOLDER + id + ".xml")) {
            if (stream == null) {
                throw new IllegalArgumentException("The manner (%s) must be one of %s.".formatted(id, IDS));
            }
            return read(stream);
        } catch (DiagnosedException e) {
            throw new IllegalStateException(e.diagnostics().get(0).print(id + ".xml"), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a manner file.
     *
     * @throws DiagnosedException if it is against the schema, or names a rule or a case that does not exist
     * @throws IOException if the stream cannot be read
     */
    public static Manner read(InputStream stream) throws DiagnosedException, IOException {
        DefinitionElement root = SCHEMA.read(stream);
        List<Diagnostic> problems = new ArrayList<>();
        Map<String, Points> byRule = new TreeMap<>(base(root, problems));
        for (DefinitionElement element : root.children("rule")) {
            Rule rule = rule(element, problems);
            if (rule != null) {
                Points inherited = byRule.getOrDefault(rule.id(), Points.NONE);
                byRule.put(rule.id(), points(element, rule, inherited, problems));
            }
        }
        if (!problems.isEmpty()) {
            throw new DiagnosedException(problems);
        }
        DefinitionElement summary = root.child("summary");
        return new Manner(root.required("id"), summary == null ? "" : summary.text(), byRule);
    }

    private static Map<String, Points> base(DefinitionElement root, List<Diagnostic> problems) {
        String base = root.attribute("based-on");
        if (base == null) {
            return Map.of();
        }
        if (!IDS.contains(base)) {
            problems.add(unknown(root, "manner", base, IDS));
            return Map.of();
        }
        return of(base).byRule();
    }

    private static @Nullable Rule rule(DefinitionElement element, List<Diagnostic> problems) {
        String id = element.required("id");
        List<Rule> rules = RuleBook.rules();
        for (Rule rule : rules) {
            if (rule.id().equals(id)) {
                return rule;
            }
        }
        problems.add(unknown(element, "rule", id, rules.stream().map(Rule::id).toList()));
        return null;
    }

    private static Points points(DefinitionElement element, Rule rule, Points inherited, List<Diagnostic> problems) {
        Map<String, Integer> byCase = new TreeMap<>(inherited.byCase());
        for (DefinitionElement points : element.children("points")) {
            String name = points.required("case");
            if (!rule.cases().contains(name)) {
                problems.add(unknown(points, "case of rule " + rule.id(), name, rule.cases()));
            }
            byCase.put(name, Integer.parseInt(points.text()));
        }
        return new Points(byCase);
    }

    private static Diagnostic unknown(DefinitionElement element, String what, String name, List<String> known) {
        List<String> nearest = NearestNames.of(name, known);
        return Diagnostic.error(
                DiagnosticCode.BAD_DEFINITION,
                element.place(),
                "There is no %s named %s.".formatted(what, name),
                nearest.isEmpty()
                        ? "Maybe one of these is meant: %s.".formatted(String.join(", ", known))
                        : "Maybe %s is meant.".formatted(String.join(" or ", nearest)));
    }
}
