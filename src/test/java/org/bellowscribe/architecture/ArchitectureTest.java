package org.bellowscribe.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bellowscribe.annotation.Annotator;
import org.bellowscribe.solver.Rule;
import org.bellowscribe.solver.StepLimit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Which package may use which, and what only one package may do. */
class ArchitectureTest {

    private static final String ROOT = "org.bellowscribe.";

    /** The arrows. A package may use what it names here and whatever that may use. */
    private static final Map<String, Set<String>> ARROWS = new TreeMap<>(Map.ofEntries(
            Map.entry("theory", Set.of()),
            Map.entry("diagnostic", Set.of()),
            Map.entry("definition", Set.of("diagnostic")),
            Map.entry("book", Set.of("definition")),
            Map.entry("score", Set.of("theory", "diagnostic")),
            Map.entry("instrument", Set.of("theory", "diagnostic", "definition")),
            Map.entry("accompaniment", Set.of("score", "instrument")),
            Map.entry("solver", Set.of("accompaniment")),
            Map.entry("cause", Set.of("replay")),
            Map.entry("decision", Set.of("cause")),
            Map.entry("syllabus", Set.of("decision")),
            Map.entry("replay", Set.of("solver")),
            Map.entry("learning", Set.of("solver")),
            Map.entry("lefthand", Set.of("solver")),
            Map.entry("annotation", Set.of("lefthand", "decision")),
            Map.entry("words", Set.of("annotation")),
            Map.entry("difficulty", Set.of("decision", "lefthand", "definition")),
            Map.entry("musicxml", Set.of("annotation")),
            Map.entry("fit", Set.of("solver")),
            Map.entry("report", Set.of("guess", "replay", "fit", "lefthand", "learning", "decision", "difficulty")),
            Map.entry("guess", Set.of("decision")),
            Map.entry("exercise", Set.of("musicxml")),
            Map.entry("stage", Set.of("musicxml", "guess")),
            Map.entry("marking", Set.of("stage", "exercise", "report", "sound")),
            Map.entry("api", Set.of("marking")),
            Map.entry("drawing", Set.of("decision", "replay")),
            Map.entry("sound", Set.of("decision", "lefthand")),
            Map.entry("compare", Set.of("page")),
            Map.entry("page", Set.of("report", "words", "drawing", "exercise")),
            Map.entry("batch", Set.of("marking", "words", "drawing", "sound", "compare", "page")),
            Map.entry("edition", Set.of("annotation", "report", "syllabus", "words")),
            Map.entry("cli", Set.of("batch", "book", "edition"))));

    /** Packages that read our own data files; the code that decides does not. */
    private static final String[] DATA_READERS = {
        ROOT + "definition..",
        ROOT + "instrument.file..",
        ROOT + "accompaniment.pattern..",
        ROOT + "solver.manner..",
        ROOT + "solver.pin..",
        ROOT + "annotation.style.."
    };

    /** Types of which an object is made to be changed. */
    private static final String CHANGING = "java\\.util\\.concurrent\\..*|java\\.lang\\.(ThreadLocal|StringBuilder)"
            + "|java\\.util\\.(Hash|Tree|LinkedHash|Array|Linked)(Map|Set|List|Deque)";

    private static final JavaClasses CLASSES = OurClasses.ALL;

    static List<String> packages() {
        return List.copyOf(ARROWS.keySet());
    }

    @ParameterizedTest
    @MethodSource("packages")
    void arrowsPointDown(String name) {
        Set<String> allowed = new TreeSet<>(Set.of(name));
        while (allowed.addAll(
                allowed.stream().flatMap(each -> ARROWS.get(each).stream()).toList())) {}
        DescribedPredicate<JavaClass> ours = resideInAPackage("org.bellowscribe..");
        String[] within = allowed.stream().map(each -> ROOT + each + "..").toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage(ROOT + name + "..")
                .should()
                .dependOnClassesThat(ours.and(not(resideInAnyPackage(within))))
                .allowEmptyShould(true)
                .check(CLASSES);
    }

    @Test
    void everyPackageHasItsArrows() {
        Set<String> found = new TreeSet<>();
        CLASSES.forEach(
                each -> found.add(each.getPackageName().substring(ROOT.length()).split("\\.")[0]));
        found.removeAll(ARROWS.keySet());
        assertEquals(Set.of(), found);
    }

    @Test
    void packagesFormNoCycles() {
        slices().matching(ROOT + "(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void onlyMusicxmlSeesProxymusic() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "musicxml..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.audiveris..", "jakarta.xml..")
                .check(CLASSES);
    }

    @Test
    void onlyTheCommandLineUsesStandardStreamsAndEndsTheProcess() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .accessField(System.class, "in")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .check(CLASSES);
    }

    @Test
    void onlyMainEndsTheProcessAndChoosesItsLanguage() {
        noClasses()
                .that(not(describe("Main", each -> each.getName().equals(ROOT + "cli.Main"))))
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Locale.class, "setDefault", Locale.class)
                .orShould()
                .callMethod(System.class, "setProperty", String.class, String.class)
                .check(CLASSES);
    }

    /** One program may use the tool many times at once; a parser a thread is all that stays. */
    @Test
    void nothingStaticChanges() {
        fields().that().areStatic().should().beFinal().check(CLASSES);
        fields().that()
                .areStatic()
                .and(not(describe("the parsers", each -> each.getFullName().equals(ROOT + "musicxml.SafeXml.READER"))))
                .should()
                .notHaveRawType(describe("may change", each -> each.getName().matches(CHANGING)))
                .check(CLASSES);
    }

    @Test
    void onlyTwoPackagesMakeXmlParsers() {
        noClasses()
                .that()
                .resideOutsideOfPackages(ROOT + "musicxml..", ROOT + "definition..")
                .should()
                .dependOnClassesThat()
                .haveNameMatching("javax\\.xml\\..*Factory")
                .check(CLASSES);
    }

    /** Same input, same marks, however slow the machine is. */
    @Test
    void whatDecidesKnowsNoClockAndNoChance() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        ROOT + "solver..",
                        ROOT + "accompaniment..",
                        ROOT + "annotation..",
                        ROOT + "syllabus..",
                        ROOT + "edition..",
                        ROOT + "fit..")
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.time\\..*|java\\.util\\.(Random.*|UUID|Date|Timer.*)|java\\.security\\..*"
                        + "|java\\.util\\.(concurrent|random)\\..*|java\\.lang\\.Thread")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(Math.class, "random")
                .check(CLASSES);
    }

    @Test
    void whatDecidesSeesNoFile() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        ROOT + "theory..",
                        ROOT + "score..",
                        ROOT + "instrument..",
                        ROOT + "accompaniment..",
                        ROOT + "solver..",
                        ROOT + "replay..",
                        ROOT + "annotation..",
                        ROOT + "syllabus..",
                        ROOT + "edition..",
                        ROOT + "fit..")
                .and(not(resideInAnyPackage(DATA_READERS)))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio..", ROOT + "definition..")
                .check(CLASSES);
    }

    @Test
    void replayKnowsOnlyTheResultOfTheSolver() {
        Set<String> results = Set.of("Solution", "Step", "Cost", "AirUse", "LeftHandPlay");
        noClasses()
                .that()
                .resideInAPackage(ROOT + "replay..")
                .should()
                .dependOnClassesThat(resideInAPackage(ROOT + "solver..")
                        .and(describe("are no result", each -> !results.contains(each.getSimpleName()))))
                .check(CLASSES);
    }

    @Test
    void plugInsAreFinalAndKeepNothing() {
        DescribedPredicate<JavaClass> plugIn = describe(
                "is a plug-in",
                each -> !each.isInterface()
                        && (each.isAssignableTo(Annotator.class)
                                || each.isAssignableTo(Rule.class)
                                || each.isAssignableTo(StepLimit.class)));
        classes()
                .that(plugIn)
                .should()
                .haveModifier(com.tngtech.archunit.core.domain.JavaModifier.FINAL)
                .check(CLASSES);
        fields().that()
                .areDeclaredInClassesThat(plugIn)
                .should()
                .beStatic()
                .andShould()
                .beFinal()
                .check(CLASSES);
    }

    @Test
    void namesSayWhatAThingIs() {
        noClasses()
                .should()
                .haveNameMatching(".*(Util|Utils|Helper|Manager|Impl|Info|Data)")
                .check(CLASSES);
    }
}
