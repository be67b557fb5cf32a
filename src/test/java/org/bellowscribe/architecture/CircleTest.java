package org.bellowscribe.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** No circle of packages, rooms of packages included; in the solver no circle of classes either, but those named here. */
class CircleTest {

    private static final String ROOT = "org.bellowscribe.";

    /**
     * Doors: what callers of a package ask, and the only classes of it that look into its own rooms. They stand beside the
     * contract because callers look for them there; nothing in the rooms uses them but what asks again from outside.
     */
    private static final Set<String> DOORS = Set.of("solver.Solver", "solver.Reach", "accompaniment.Accompaniment");

    /**
     * Circles of classes that stand as they are, each explained in its package-info. That of a sealed interface and what it
     * permits (Rule) is not seen here.
     */
    private static final Set<Set<String>> NAMED = Set.of(Set.of("MannerLibrary", "MannerReader"));

    private static final int MOST_IMPORTS = 20;

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.bellowscribe");

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
    void everyCircleOfClassesOfTheSolverIsNamed() {
        Map<JavaClass, Set<JavaClass>> reached =
                new TreeMap<>((a, b) -> a.getName().compareTo(b.getName()));
        CLASSES.stream()
                .filter(each -> each.getPackageName().startsWith(ROOT + "solver"))
                .forEach(each -> reached.computeIfAbsent(outermost(each), any -> new HashSet<>())
                        .addAll(neighbors(each)));
        boolean grows = true;
        while (grows) {
            grows = false;
            for (Set<JavaClass> ofOne : reached.values()) {
                for (JavaClass other : Set.copyOf(ofOne)) {
                    grows |= ofOne.addAll(reached.getOrDefault(other, Set.of()));
                }
            }
        }
        Set<Set<String>> circles = new HashSet<>();
        reached.forEach((one, others) -> {
            Set<String> circle = new TreeSet<>();
            others.stream()
                    .filter(other -> reached.getOrDefault(other, Set.of()).contains(one))
                    .forEach(other -> circle.add(other.getSimpleName()));
            if (circle.size() > 1) {
                circles.add(circle);
            }
        });
        assertEquals(NAMED, circles);
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
