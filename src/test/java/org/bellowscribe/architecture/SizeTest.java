package org.bellowscribe.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * Files, methods and lists of parameters stay small enough to read at a glance. What is larger, within bounds, stands in
 * {@code larger.txt} with the reason; what no longer is must leave it. The columns of a table of cases and the components of a
 * record are not counted.
 */
class SizeTest {

    private static final int FILE_LINES = 300;
    private static final int METHOD_LINES = 30;
    private static final int PARAMETERS = 4;
    private static final int NAMED_METHOD_LINES = 40;
    private static final int NAMED_PARAMETERS = 6;

    private final Set<String> larger = new TreeSet<>();
    private final List<String> tooLarge = new ArrayList<>();

    @Test
    void everythingIsWithinItsBudgetOrNamedWithItsReason() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(sources()));
            Trees trees = Trees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                new Measure(unit, trees.getSourcePositions()).measure();
            }
        }
        Set<String> named = named();
        assertEquals(Set.of(), without(larger, named), "larger than it should be, and not named");
        assertEquals(Set.of(), without(named, larger), "named, and no longer larger");
        assertEquals(List.of(), tooLarge);
    }

    /** Returns what the list names. */
    private static Set<String> named() throws IOException {
        Path list = Path.of("src", "test", "resources", "org", "bellowscribe", "architecture", "larger.txt");
        return Files.readAllLines(list).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .collect(Collectors.toSet());
    }

    private static Set<String> without(Set<String> all, Set<String> some) {
        Set<String> others = new TreeSet<>(all);
        others.removeAll(some);
        return others;
    }

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>();
        for (String root : List.of("src/main/java", "src/test/java")) {
            try (Stream<Path> files = Files.walk(Path.of(root))) {
                files.filter(file -> file.toString().endsWith(".java")).sorted().forEach(sources::add);
            }
        }
        return sources;
    }

    private final class Measure extends TreeScanner<Void, String> {

        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final LineMap lines;
        private boolean inRecord;

        Measure(CompilationUnitTree unit, SourcePositions positions) {
            this.unit = unit;
            this.positions = positions;
            lines = unit.getLineMap();
        }

        void measure() {
            String name = Path.of(unit.getSourceFile().getName())
                    .getFileName()
                    .toString()
                    .replace(".java", "");
            long fileLines = lines.getLineNumber(positions.getEndPosition(unit, unit));
            check(name, fileLines, FILE_LINES);
            scan(unit, name);
        }

        @Override
        public Void visitClass(ClassTree type, String name) {
            boolean outer = inRecord;
            inRecord = type.getKind() == Tree.Kind.RECORD;
            super.visitClass(type, name);
            inRecord = outer;
            return null;
        }

        @Override
        public Void visitMethod(MethodTree method, String name) {
            String full = name + "." + method.getName();
            if (method.getBody() != null) {
                // The lines between the braces.
                long first = lines.getLineNumber(positions.getStartPosition(unit, method.getBody()));
                long last = lines.getLineNumber(positions.getEndPosition(unit, method.getBody()));
                size(full + " lines", last - first - 1, METHOD_LINES, NAMED_METHOD_LINES);
            }
            if (!(inRecord && method.getReturnType() == null) && !isTable(method)) {
                size(full + " parameters", method.getParameters().size(), PARAMETERS, NAMED_PARAMETERS);
            }
            return super.visitMethod(method, name);
        }

        private boolean isTable(MethodTree method) {
            return method.getModifiers().getAnnotations().stream()
                    .anyMatch(each -> each.getAnnotationType().toString().equals("ParameterizedTest"));
        }

        private void size(String name, long count, int usual, int most) {
            if (count > usual) {
                larger.add(name);
            }
            check(name, count, most);
        }

        private void check(String name, long count, int most) {
            if (count > most) {
                tooLarge.add("%s: %d, more than %d".formatted(name, count, most));
            }
        }
    }
}
