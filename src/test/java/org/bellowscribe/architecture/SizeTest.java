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
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Files, methods and lists of parameters stay small enough to read at a glance. */
class SizeTest {

    private static final int FILE_LINES = 300;
    private static final int METHOD_LINES = 30;
    private static final int PARAMETERS = 4;

    private final List<String> tooLarge = new ArrayList<>();

    @Test
    void everythingIsWithinItsBudget() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, files, null, List.of("-proc:none"), null, files.getJavaFileObjectsFromPaths(sources()));
            Trees trees = Trees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                new Measure(unit, trees.getSourcePositions()).measure();
            }
        }
        assertEquals(List.of(), tooLarge);
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
            check(name, "lines", fileLines, FILE_LINES);
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
                check(full, "lines", last - first - 1, METHOD_LINES);
            }
            if (!(inRecord && method.getReturnType() == null)) {
                check(full, "parameters", method.getParameters().size(), PARAMETERS);
            }
            return super.visitMethod(method, name);
        }

        private void check(String name, String what, long count, int most) {
            if (count > most) {
                tooLarge.add("%s has %d %s, more than %d".formatted(name, count, what, most));
            }
        }
    }
}
