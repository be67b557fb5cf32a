package org.bellowscribe.solver.manner;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bellowscribe.accompaniment.Pattern;
import org.bellowscribe.accompaniment.PatternChoice;
import org.bellowscribe.accompaniment.pattern.PatternLibrary;
import org.bellowscribe.definition.DefinitionElement;
import org.bellowscribe.diagnostic.DiagnosedException;
import org.bellowscribe.diagnostic.Diagnostic;
import org.bellowscribe.diagnostic.DiagnosticCode;
import org.bellowscribe.diagnostic.NearestNames;
import org.bellowscribe.solver.Manner;
import org.bellowscribe.solver.Points;
import org.bellowscribe.solver.Rule;
import org.jspecify.annotations.Nullable;

/** Reads a manner file; all that is wrong with it is told at once. */
final class MannerReader {

    private final List<Rule> rules = Rule.all();
    private final List<Diagnostic> problems = new ArrayList<>();

    private MannerReader() {}

    static Manner read(DefinitionElement root) throws DiagnosedException {
        MannerReader reader = new MannerReader();
        Manner manner = reader.manner(root);
        if (!reader.problems.isEmpty()) {
            throw new DiagnosedException(reader.problems);
        }
        return manner;
    }

    private Manner manner(DefinitionElement root) {
        Manner base = base(root);
        Map<String, Points> byRule = new TreeMap<>(base == null ? Map.of() : base.byRule());
        for (DefinitionElement element : root.children("rule")) {
            Rule rule = rule(element);
            if (rule != null) {
                byRule.put(rule.id(), points(element, rule, byRule.getOrDefault(rule.id(), Points.NONE)));
            }
        }
        DefinitionElement summary = root.child("summary");
        List<String> remarks =
                root.children("remark").stream().map(DefinitionElement::text).toList();
        List<PatternChoice.Named> patterns = new ArrayList<>(base == null ? List.of() : base.patterns());
        root.children("pattern").forEach(element -> add(patterns, element));
        return new Manner(root.required("id"), summary == null ? "" : summary.text(), remarks, byRule, patterns);
    }

    private @Nullable Manner base(DefinitionElement root) {
        String base = root.attribute("based-on");
        if (base == null) {
            return null;
        }
        if (!MannerLibrary.ids().contains(base)) {
            problems.add(unknown(root, "manner", base, MannerLibrary.ids()));
            return null;
        }
        return MannerLibrary.of(base);
    }

    private void add(List<PatternChoice.Named> patterns, DefinitionElement element) {
        String id = element.required("id");
        for (Pattern pattern : PatternLibrary.all()) {
            if (pattern.id().equals(id)) {
                patterns.add(new PatternChoice.Named(pattern, element.attribute("time"), 0, 0));
                return;
            }
        }
        problems.add(unknown(
                element,
                "pattern",
                id,
                PatternLibrary.all().stream().map(Pattern::id).toList()));
    }

    private @Nullable Rule rule(DefinitionElement element) {
        String id = element.required("id");
        for (Rule rule : rules) {
            if (rule.id().equals(id)) {
                return rule;
            }
        }
        problems.add(unknown(element, "rule", id, rules.stream().map(Rule::id).toList()));
        return null;
    }

    private Points points(DefinitionElement element, Rule rule, Points inherited) {
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
