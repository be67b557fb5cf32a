package org.bellowscribe.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * No circle of packages, rooms of packages included, and none of the classes of a package but those that {@code circles.txt}
 * names with the reason; what no longer is must leave it. References are those of the compiled classes, so that neither a
 * constant of the language nor what a sealed interface permits is one.
 */
class CircleTest {

    private static final String ROOT = "org.bellowscribe.";

    /**
     * Doors: what callers of a package ask, and the only classes of it that look into its own rooms. They stand beside the
     * contract because callers look for them there; nothing in the rooms uses them but what asks again from outside.
     */
    private static final Set<String> DOORS = Set.of("solver.Solver", "solver.Reach", "accompaniment.Accompaniment");

    private static final Path LIST =
            Path.of("src", "test", "resources", "org", "bellowscribe", "architecture", "circles.txt");

    private static final int MOST_IMPORTS = 20;

    private static final JavaClasses CLASSES = OurClasses.ALL;

    @Test
    void noRoomOfAPackageIsInACircle() {
        SliceAssignment rooms = new SliceAssignment() {
            @Override
            public SliceIdentifier getIdentifierOf(JavaClass each) {
                if (!each.getPackageName().startsWith("org.bellowscribe")) {
                    return SliceIdentifier.ignore();
                }
                String name = outermost(each).getName().substring(ROOT.length());
                return SliceIdentifier.of(DOORS.contains(name) ? "door " + name : each.getPackageName());
            }

            @Override
            public String getDescription() {
                return "packages with their rooms";
            }
        };
        slices().assignedFrom(rooms).should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void everyCircleOfClassesIsNamedWithItsReason() throws IOException {
        Set<String> circles = circles();
        Set<String> named = named();
        assertEquals(Set.of(), without(circles, named), "in a circle, and not named");
        assertEquals(Set.of(), without(named, circles), "named, and no longer a circle");
    }

    @Test
    void everyNamedCircleHasItsReasonAboveIt() throws IOException {
        String before = "";
        for (String line : Files.readAllLines(LIST)) {
            boolean circle = !line.isBlank() && !line.startsWith("#");
            assertTrue(!circle || before.startsWith("# "), line);
            before = line;
        }
    }

    /** Returns what the list names. */
    private static Set<String> named() throws IOException {
        return Files.readAllLines(LIST).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> without(Set<String> all, Set<String> some) {
        Set<String> others = new TreeSet<>(all);
        others.removeAll(some);
        return others;
    }

    /** Returns the circles, each as its package, a colon and its classes. */
    private static Set<String> circles() {
        Map<JavaClass, Set<JavaClass>> reached = reached();
        Set<String> circles = new TreeSet<>();
        reached.forEach((one, others) -> {
            // A class that is reached from itself is in a circle, for nothing is its own neighbor.
            if (others.contains(one)) {
                circles.add(others.stream()
                        .filter(other -> reached.getOrDefault(other, Set.of()).contains(one))
                        .map(JavaClass::getSimpleName)
                        .sorted()
                        .collect(Collectors.joining(" ", one.getPackageName().substring(ROOT.length()) + ": ", "")));
            }
        });
        return circles;
    }

    /** Returns for each class those of its package to which its references lead, by way of others too. */
    private static Map<JavaClass, Set<JavaClass>> reached() {
        Map<JavaClass, Set<JavaClass>> reached =
                new TreeMap<>((a, b) -> a.getName().compareTo(b.getName()));
        CLASSES.forEach(each ->
                reached.computeIfAbsent(outermost(each), any -> new HashSet<>()).addAll(neighbors(each)));
        boolean grows = true;
        while (grows) {
            grows = false;
            for (Set<JavaClass> ofOne : reached.values()) {
                for (JavaClass other : Set.copyOf(ofOne)) {
                    grows |= ofOne.addAll(reached.getOrDefault(other, Set.of()));
                }
            }
        }
        return reached;
    }

    private static Set<JavaClass> neighbors(JavaClass each) {
        Set<JavaClass> neighbors = new HashSet<>();
        for (Dependency dependency : each.getDirectDependenciesFromSelf()) {
            JavaClass other = outermost(dependency.getTargetClass().getBaseComponentType());
            if (other.getPackageName().equals(each.getPackageName()) && !other.equals(outermost(each))) {
                neighbors.add(other);
            }
        }
        return neighbors;
    }

    @Test
    void noClassOfTheSolverKnowsTooMany() {
        Map<String, Integer> tooMany = new TreeMap<>();
        Map<JavaClass, Set<JavaClass>> imports =
                new TreeMap<>((a, b) -> a.getName().compareTo(b.getName()));
        CLASSES.stream()
                .filter(each -> each.getPackageName().startsWith(ROOT + "solver"))
                .forEach(each -> each.getDirectDependenciesFromSelf().forEach(dependency -> {
                    JavaClass other = outermost(dependency.getTargetClass().getBaseComponentType());
                    if (other.getName().startsWith(ROOT)
                            && !other.getPackageName().equals(each.getPackageName())) {
                        imports.computeIfAbsent(outermost(each), any -> new HashSet<>())
                                .add(other);
                    }
                }));
        imports.forEach((each, others) -> {
            if (others.size() > MOST_IMPORTS) {
                tooMany.put(each.getName(), others.size());
            }
        });
        assertEquals(Map.of(), tooMany);
    }

    private static JavaClass outermost(JavaClass each) {
        JavaClass outer = each;
        while (outer.getEnclosingClass().isPresent()) {
            outer = outer.getEnclosingClass().get();
        }
        return outer;
    }
}
