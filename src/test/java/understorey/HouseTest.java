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
            Map.entry("schema", List.of()),
            Map.entry("yaml", List.of("schema")),
            Map.entry("reading", List.of("plan", "yaml", "schema")),
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
                    "exposure", "packing", "scene", "scene.chart", "scene.sketch", "brief", "debrief", "schema")),
            Map.entry("publish", List.of("pages")),
            Map.entry("preview", List.of("pages")),
            Map.entry("cli", List.of("plan", "yaml", "reading", "share", "sky", "optics", "light", "weather", "season", "kit", "visit", "order",
                    "story", "exposure", "packing", "scene", "brief", "debrief", "pages", "publish", "preview", "schema")));

    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "yaml", List.of("com.fasterxml.jackson..", "org.yaml.snakeyaml.."),
            "schema", List.of("com.fasterxml.jackson.."),
            "reading", List.of("com.vladsch.flexmark.."),
            "sky", List.of("org.shredzone.commons.suncalc.."),
            "season", List.of("org.apache.commons.statistics.distribution.."),
            "exposure", List.of("org.apache.commons.statistics.distribution.."),
            "debrief", List.of("com.drew.."),
            "pages", List.of("com.fasterxml.jackson.core..", "freemarker..", "com.vladsch.flexmark..", "com.github.weisj.jsvg..", "javax.imageio.."),
            "preview", List.of("com.sun.net.httpserver.."),
            "cli", List.of("picocli.."));

    /** What each inner room may use of the room around it; the front, that room itself, may use them all. */
    private static final Map<String, List<String>> INSIDE = Map.ofEntries(
            Map.entry("pages.words", List.of()),
            Map.entry("pages.tables", List.of("words")),
            Map.entry("pages.markdown", List.of("words")),
            Map.entry("pages.svg", List.of("words")),
            Map.entry("pages.preview", List.of()),
            Map.entry("pages.json", List.of("words", "tables")),
            Map.entry("pages.feeds", List.of("words")),
            Map.entry("pages.templates", List.of("words", "markdown")),
            Map.entry("pages.html", List.of("words", "tables", "markdown", "svg", "templates")),
            Map.entry("yaml.finding", List.of()),
            Map.entry("yaml.tree", List.of("finding")),
            Map.entry("yaml.value", List.of("finding", "tree")),
            Map.entry("reading.files", List.of()),
            Map.entry("reading.gear", List.of()),
            Map.entry("reading.subject", List.of("files")),
            Map.entry("reading.site", List.of("files", "subject")),
            Map.entry("reading.trip", List.of("files", "gear", "subject", "site")),
            Map.entry("kit.camera", List.of()),
            Map.entry("exposure.scale", List.of()),
            Map.entry("exposure.motion", List.of()),
            Map.entry("light.illuminance", List.of()),
            Map.entry("season.model", List.of()));

    /** Of the libraries of a room, those that an inner room may use. */
    private static final Map<String, List<String>> LIBRARIES_INSIDE = Map.of(
            "pages.markdown", List.of("freemarker..", "com.vladsch.flexmark.."),
            "pages.json", List.of("com.fasterxml.jackson.core.."),
            "pages.templates", List.of("freemarker.."),
            "pages.preview", List.of("com.github.weisj.jsvg..", "javax.imageio.."),
            "pages.html", List.of("freemarker.core.."),
            "yaml.tree", List.of("com.fasterxml.jackson..", "org.yaml.snakeyaml.."),
            "reading.trip", List.of("com.vladsch.flexmark.."),
            "exposure.motion", List.of("org.apache.commons.statistics.distribution.."),
            "season.model", List.of("org.apache.commons.statistics.distribution.."));

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
    List<DynamicTest> keepsEachInnerRoomToItsArrows() {
        return INSIDE.keySet().stream().sorted().map(name -> DynamicTest.dynamicTest(name, () -> arrowsInside(name))).toList();
    }

    private static void arrowsInside(String name) {
        String around = around(name);
        List<String> open = new ArrayList<>(List.of(own(name)));
        INSIDE.get(name).forEach(other -> open.add(own(around + "." + other)));
        noClasses().that().resideInAPackage(own(name)).should().dependOnClassesThat(resideInAPackage(own(around))
                .and(not(resideInAnyPackage(open.toArray(String[]::new))))).check(CLASSES);
        noClasses().that().resideInAPackage(own(name)).should()
                .dependOnClassesThat(resideInAnyPackage(LIBRARIES.getOrDefault(around, List.of()).toArray(String[]::new))
                        .and(not(resideInAnyPackage(LIBRARIES_INSIDE.getOrDefault(name, List.of()).toArray(String[]::new)))))
                .check(CLASSES);
    }

    private static String around(String inner) {
        return inner.substring(0, inner.indexOf('.'));
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
        INSIDE.forEach((name, uses) -> uses.forEach(other -> assertTrue(INSIDE.containsKey(around(name) + "." + other), name)));
    }

    private static List<String> rooms() {
        return Stream.concat(MAY_USE.keySet().stream(), INSIDE.keySet().stream()).sorted().toList();
    }

    @Test
    void turnsRoundNowhere() {
        slices().matching("understorey.(*)..").should().beFreeOfCycles().check(CLASSES);
        INSIDE.keySet().stream().map(HouseTest::around).distinct()
                .forEach(room -> slices().matching("understorey." + room + ".(*)..").should().beFreeOfCycles().check(CLASSES));
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
