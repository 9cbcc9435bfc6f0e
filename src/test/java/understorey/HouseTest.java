package understorey;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import understorey.pages.json.Json;
import understorey.pages.words.TemplateFault;
import understorey.pages.words.Units;

/** The arrows between the packages: a plan goes through the house once, front to back. */
class HouseTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("understorey");

    /**
     * What each package may use. Every package may use {@code advice}, because every one from {@code light} on gives some.
     */
    private static final Map<String, List<String>> MAY_USE = Map.ofEntries(
            Map.entry("advice", List.of()),
            Map.entry("plan", List.of()),
            Map.entry("optics", List.of()),
            Map.entry("yaml", List.of()),
            Map.entry("reading", List.of("plan", "yaml")),
            Map.entry("share", List.of("plan")),
            Map.entry("sky", List.of("plan", "optics")),
            Map.entry("weather", List.of("plan", "sky")),
            Map.entry("light", List.of("plan", "sky", "optics", "weather")),
            Map.entry("visit", List.of("plan", "sky", "light", "weather")),
            Map.entry("season", List.of("plan", "sky", "light", "weather", "visit")),
            Map.entry("kit", List.of("plan", "optics")),
            Map.entry("order", List.of("plan", "sky", "light", "visit")),
            Map.entry("story", List.of("plan", "kit", "visit")),
            Map.entry("exposure", List.of("plan", "light", "weather", "optics", "kit")),
            Map.entry("packing", List.of("plan", "kit", "exposure", "visit", "sky")),
            Map.entry("scene", List.of("plan")),
            Map.entry("scene.chart", List.of("scene", "plan", "sky", "light", "visit", "order", "season", "kit", "optics")),
            Map.entry("scene.sketch", List.of("scene", "plan", "sky", "optics", "kit")),
            Map.entry("brief", List.of("plan", "share", "sky", "optics", "light", "weather", "season", "kit", "visit", "order", "story", "exposure",
                    "packing", "scene", "scene.chart", "scene.sketch")),
            Map.entry("debrief", List.of("plan", "yaml", "reading", "light", "optics", "exposure", "brief")),
            Map.entry("pages", List.of("plan", "sky", "optics", "light", "weather", "season", "kit", "visit", "order", "story",
                    "exposure", "packing", "scene", "scene.chart", "scene.sketch", "brief", "debrief")),
            Map.entry("publish", List.of("pages")),
            Map.entry("cli", List.of("plan", "yaml", "reading", "share", "sky", "optics", "light", "weather", "season", "kit", "visit", "order",
                    "story", "exposure", "packing", "scene", "brief", "debrief", "pages", "publish")));

    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "yaml", List.of("com.fasterxml.jackson..", "org.yaml.snakeyaml.."),
            "reading", List.of("com.vladsch.flexmark.."),
            "sky", List.of("org.shredzone.commons.suncalc.."),
            "season", List.of("org.apache.commons.statistics.distribution.."),
            "exposure", List.of("org.apache.commons.statistics.distribution.."),
            "debrief", List.of("com.drew.."),
            "pages", List.of("com.fasterxml.jackson.core..", "freemarker..", "com.vladsch.flexmark..", "com.github.weisj.jsvg..", "javax.imageio.."),
            "cli", List.of("picocli.."));

    /** What each room inside {@code pages} may use of {@code pages}; the front, {@code pages} itself, may use them all. */
    private static final Map<String, List<String>> INSIDE_PAGES = Map.of(
            "words", List.of(),
            "tables", List.of("words"),
            "markdown", List.of("words"),
            "svg", List.of("words"),
            "preview", List.of(),
            "json", List.of("words", "tables"),
            "feeds", List.of("words"),
            "templates", List.of("words", "markdown"),
            "html", List.of("words", "tables", "markdown", "svg", "templates"));

    /** Libraries of the rooms inside {@code pages}. */
    private static final Map<String, List<String>> LIBRARIES_INSIDE_PAGES = Map.of(
            "markdown", List.of("freemarker..", "com.vladsch.flexmark.."),
            "json", List.of("com.fasterxml.jackson.core.."),
            "templates", List.of("freemarker.."),
            "preview", List.of("com.github.weisj.jsvg..", "javax.imageio.."),
            "html", List.of("freemarker.core.."));

    @TestFactory
    List<DynamicTest> keepsEachPackageToItsArrows() {
        List<DynamicTest> tests = new ArrayList<>();
        MAY_USE.keySet().stream().sorted().forEach(name -> tests.add(DynamicTest.dynamicTest(name, () -> arrows(name))));
        return tests;
    }

    private static void arrows(String name) {
        List<String> open = new ArrayList<>(List.of("java..", "javax.xml.stream..", "org.jspecify.annotations..",
                own(name), own("advice")));
        MAY_USE.get(name).forEach(other -> open.add(own(other)));
        open.addAll(LIBRARIES.getOrDefault(name, List.of()));
        classes().that().resideInAPackage(own(name)).should()
                .onlyDependOnClassesThat(resideInAnyPackage(open.toArray(String[]::new)).or(isArrayOfPrimitives()))
                .allowEmptyShould(true).check(CLASSES);
    }

    @TestFactory
    List<DynamicTest> keepsEachRoomInsidePagesToItsArrows() {
        return INSIDE_PAGES.keySet().stream().sorted().map(name -> DynamicTest.dynamicTest(name, () -> arrowsInsidePages(name))).toList();
    }

    private static void arrowsInsidePages(String name) {
        List<String> open = new ArrayList<>(List.of(own("pages." + name)));
        INSIDE_PAGES.get(name).forEach(other -> open.add(own("pages." + other)));
        noClasses().that().resideInAPackage(own("pages." + name)).should().dependOnClassesThat(resideInAPackage(own("pages"))
                .and(not(resideInAnyPackage(open.toArray(String[]::new))))).check(CLASSES);
        noClasses().that().resideInAPackage(own("pages." + name)).should()
                .dependOnClassesThat(resideInAnyPackage(LIBRARIES.get("pages").toArray(String[]::new)).and(not(resideInAnyPackage(
                        LIBRARIES_INSIDE_PAGES.getOrDefault(name, List.of()).toArray(String[]::new))))).check(CLASSES);
    }

    /** The front of {@code pages}, the units that it shows, and the two types that messages on the terminal need. */
    @Test
    void entersPagesByItsFront() {
        noClasses().that().resideOutsideOfPackage(own("pages")).should().dependOnClassesThat(resideInAPackage("understorey.pages.(*)..")
                .and(not(type(TemplateFault.class).or(type(Json.class)).or(type(Units.class))))).check(CLASSES);
    }

    @Test
    void hasNoRoomThatIsNotOnThePlan() {
        List<String> rooms = CLASSES.stream().map(JavaClass::getPackageName).distinct().sorted()
                .map(name -> name.replaceFirst("understorey\\.?", "")).toList();
        assertTrue(rooms().containsAll(rooms), () -> "rooms: " + rooms);
        MAY_USE.forEach((name, uses) -> assertTrue(MAY_USE.keySet().containsAll(uses), name));
        INSIDE_PAGES.forEach((name, uses) -> assertTrue(INSIDE_PAGES.keySet().containsAll(uses), name));
    }

    private static List<String> rooms() {
        return Stream.concat(MAY_USE.keySet().stream(), INSIDE_PAGES.keySet().stream().map(name -> "pages." + name)).sorted().toList();
    }

    @Test
    void turnsRoundNowhere() {
        slices().matching("understorey.(*)..").should().beFreeOfCycles().check(CLASSES);
        slices().matching("understorey.pages.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    /** Pages read results; whoever computes one is a class with neither components nor constants to read. */
    @Test
    void computesNothingInPages() {
        DescribedPredicate<JavaClass> computes = describe("compute", type -> type.getPackageName().startsWith("understorey.")
                && !type.isRecord() && !type.isEnum() && !type.isInterface());
        noClasses().that().resideInAPackage("understorey.pages..").should()
                .dependOnClassesThat(computes.and(not(resideInAPackage("understorey.pages.."))))
                .check(CLASSES);
        noClasses().that().resideInAPackage("understorey.pages..").should()
                .callMethodWhere(describe("do trigonometry or take powers", call -> call.getTargetOwner().isEquivalentTo(Math.class)
                        && List.of("sin", "cos", "tan", "atan", "atan2", "asin", "acos", "exp", "log", "log10", "pow", "sqrt",
                                "cbrt", "hypot").contains(call.getName())))
                .check(CLASSES);
    }

    @Test
    void describesEveryRoom() {
        List<String> undescribed = Sources.main().filter(path -> !path.resolveSibling("package-info.java").toFile().exists())
                .map(Object::toString).sorted().toList();
        assertEquals(List.of(), undescribed);
    }

    /** In a room with {@code @NullMarked} the compiler refuses a null that is not declared. */
    @Test
    void marksEveryRoomForTheNullChecksOfTheCompiler() {
        List<String> unmarked = rooms().stream().filter(name -> CLASSES.containPackage("understorey." + name))
                .filter(name -> !CLASSES.getPackage("understorey." + name).isAnnotatedWith(NullMarked.class)).toList();
        assertEquals(List.of(), unmarked);
    }

    private static DescribedPredicate<JavaClass> isArrayOfPrimitives() {
        return describe("primitives and arrays of them", type -> type.getBaseComponentType().isPrimitive());
    }

    /** A room with all that is in it, but without its inner rooms where these have arrows of their own. */
    private static String own(String name) {
        return "understorey." + name + (MAY_USE.keySet().stream().anyMatch(other -> other.startsWith(name + ".")) ? "" : "..");
    }
}
