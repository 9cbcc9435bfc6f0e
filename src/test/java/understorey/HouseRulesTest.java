package understorey;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What no room may do: read the world outside, speak to a reader out of turn, outgrow its size. */
class HouseRulesTest {

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("understorey");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$|(?<=[;{}]) *//.*$");
    /** What is thrown speaks to the developer. */
    private static final Pattern THROWN = Pattern.compile("(?s)throw new .*?;");
    private static final Pattern CONSTANT = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final int MOST_LINES = 300;

    private static final ArchRule CLOCK = outsideCli("read the clock", call -> called(call, "now") && ownerIn(call, "java.time")
                || call.getTargetOwner().isEquivalentTo(java.time.Clock.class) && called(call, "system", "tick")
                || call.getTargetOwner().isEquivalentTo(System.class) && called(call, "currentTimeMillis", "nanoTime")
                || call.getTargetOwner().isEquivalentTo(java.util.Date.class) && takes(call));

    private static final ArchRule DEFAULTS = outsideCli("ask for a default", call -> called(call, "getDefault", "systemDefault", "defaultCharset")
                || call.getTargetOwner().isEquivalentTo(String.class) && (
                        called(call, "toLowerCase", "toUpperCase", "getBytes") && takes(call)
                        || called(call, "format") && !takesFirst(call, java.util.Locale.class)
                        || called(call, "formatted")
                        || called(call, "<init>") && takes(call, byte[].class))
                || call.getTargetOwner().isEquivalentTo(java.time.format.DateTimeFormatter.class)
                        && called(call, "ofPattern") && takes(call, String.class)
                || call.getTargetOwner().isAssignableTo(java.text.Format.class) && called(call, "<init>", "getInstance")
                        && call.getTarget().getRawParameterTypes().stream().noneMatch(type ->
                                type.isEquivalentTo(java.util.Locale.class)
                                || type.isEquivalentTo(java.text.DecimalFormatSymbols.class))
                || ownerIn(call, "java.io") && called(call, "printf", "format") && !takesFirst(call, java.util.Locale.class));

    /** Does all that the rules forbid, so that they are seen to catch it. */
    private static final class Offender {

        List<Object> clock() {
            return List.of(java.time.ZonedDateTime.now(), java.time.LocalDate.now(java.time.ZoneOffset.UTC),
                    java.time.Instant.now(), java.time.Clock.systemUTC(), java.time.Clock.systemDefaultZone(),
                    System.nanoTime(), System.currentTimeMillis(), new java.util.Date());
        }

        List<Object> defaults() {
            return List.of(java.util.Locale.getDefault(), java.time.ZoneId.systemDefault(), String.format("%d", 1),
                    "%d".formatted(1), "I".toLowerCase(), "i".toUpperCase(), java.util.TimeZone.getDefault(),
                    java.time.format.DateTimeFormatter.ofPattern("d"), new java.text.DecimalFormat("0"), "x".getBytes());
        }

        List<Object> allowed() {
            return List.of("I".toLowerCase(java.util.Locale.ROOT), String.format(java.util.Locale.ROOT, "%d", 1),
                    java.time.LocalDate.of(2027, 5, 8), "x".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
    }

    @Test
    void readsNoClock() {
        CLOCK.check(CLASSES);
    }

    @Test
    void asksForNoDefaultLocaleZoneOrCharset() {
        DEFAULTS.check(CLASSES);
    }

    @Test
    void wouldCatchEveryCallThatItForbids() {
        JavaClasses offender = new ClassFileImporter().importClasses(Offender.class);
        Offender calls = new Offender();
        assertEquals(calls.clock().size(), violations(CLOCK, offender));
        assertEquals(calls.defaults().size(), violations(DEFAULTS, offender));
        assertEquals(4, calls.allowed().size());
    }

    private static int violations(ArchRule rule, JavaClasses classes) {
        return rule.evaluate(classes).getFailureReport().getDetails().size();
    }

    /**
     * Rooms that compute give figures. Text for a reader has words with spaces between them, or is put together by
     * a formatter: neither is found there.
     */
    @Test
    void holdsNoTextForAReaderWhereFiguresAreComputed() {
        noClasses().that().resideInAnyPackage("understorey.optics..", "understorey.light..", "understorey.sky..",
                "understorey.season..").should().dependOnClassesThat(describe("put text together",
                        type -> Set.of("java.text", "java.util.Formatter").stream().anyMatch(type.getName()::startsWith)))
                .orShould().callMethodWhere(describe("String.format", call -> call.getTargetOwner()
                        .isEquivalentTo(String.class) && called(call, "format", "formatted"))).check(CLASSES);
        List<String> texts = new ArrayList<>();
        for (String room : List.of("optics", "light", "sky", "season")) {
            Sources.main(room).forEach(file -> texts.addAll(textsIn(file)));
        }
        assertEquals(List.of(), texts);
    }

    private static List<String> textsIn(Path file) {
        String code = THROWN.matcher(COMMENT.matcher(Sources.read(file)).replaceAll("")).replaceAll("");
        List<String> texts = new ArrayList<>();
        for (Matcher constant = CONSTANT.matcher(code); constant.find();) {
            if (constant.group(1).strip().contains(" ")) {
                texts.add(file + ": " + constant.group());
            }
        }
        return texts;
    }

    @Test
    void keepsEveryFileToASizeThatCanBeRead() {
        List<String> tooLong = Stream.of("src", "templates").flatMap(folder -> Sources.below(Path.of(folder)))
                .filter(file -> !file.toString().endsWith(".csv") && !file.toString().endsWith(".schema.json") && !file.endsWith("plan-files.yaml") && !file.endsWith("format.md") && !file.endsWith("templates.md")
                        && !file.toString().endsWith(".png"))
                .filter(file -> Sources.lines(file) > MOST_LINES)
                .map(Path::toString).toList();
        assertEquals(List.of(), tooLong);
    }

    @Test
    void namesNoClassAfterWhatItDoesToOthers() {
        noClasses().should().haveNameMatching(".*(Utils?|Helper|Manager|Engine|Impl)").check(CLASSES);
    }

    private interface Rule {
        boolean breaks(JavaCall<?> call);
    }

    private static ArchRule outsideCli(String says, Rule rule) {
        DescribedPredicate<JavaCall<?>> breaks = describe(says, rule::breaks);
        return noClasses().that().resideOutsideOfPackage("understorey.cli..").should().callCodeUnitWhere(breaks);
    }

    private static boolean called(JavaCall<?> call, String... names) {
        return Stream.of(names).anyMatch(name -> call.getName().equals(name)
                || name.equals("system") && call.getName().startsWith(name)
                || name.equals("tick") && call.getName().startsWith(name) && takes(call, java.time.ZoneId.class));
    }

    private static boolean takes(JavaCall<?> call, Class<?>... types) {
        List<JavaClass> parameters = call.getTarget().getRawParameterTypes();
        boolean same = parameters.size() == types.length;
        for (int i = 0; same && i < types.length; i++) {
            same = parameters.get(i).isEquivalentTo(types[i]);
        }
        return same;
    }

    private static boolean takesFirst(JavaCall<?> call, Class<?> type) {
        List<JavaClass> parameters = call.getTarget().getRawParameterTypes();
        return !parameters.isEmpty() && parameters.get(0).isEquivalentTo(type);
    }

    private static boolean ownerIn(JavaCall<?> call, String name) {
        return call.getTargetOwner().getPackageName().equals(name);
    }
}
