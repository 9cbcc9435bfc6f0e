package understorey.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import understorey.Sources;
import understorey.advice.Advice;
import understorey.advice.In;
import understorey.advice.Measure;
import understorey.plan.Season;
import understorey.scene.Fact;

/** Holds the records of advice, those of what drawings say, and the sentences in the templates to each other. */
class AdviceSentencesTest {

    private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");
    private static final Set<Class<?>> NUMBERS = Set.of(double.class, int.class, long.class);
    /** Types that are worded without a measure. */
    private static final Set<Class<?>> PLAIN = Set.of(String.class, List.class, Enum.class, Month.class, DayOfWeek.class,
            LocalDate.class, LocalTime.class, ZonedDateTime.class, Advice.class, Fact.class);

    /** Every record below a sealed interface; an enum below it has none. */
    static List<Class<?>> records(Class<?> topic) {
        return topic.isRecord() ? List.of(topic) : topic.isEnum() ? List.of()
                : Arrays.stream(topic.getPermittedSubclasses()).flatMap(type -> records(type).stream()).toList();
    }

    private static List<Class<?>> records() {
        return Stream.of(Advice.class, Fact.class).flatMap(topic -> records(topic).stream()).toList();
    }

    @Test
    void everyRecordHasOneSentenceAndEverySentenceARecord() {
        Map<String, Integer> surplus = new HashMap<>();
        lines().forEach(line -> surplus.merge(key(line), 1, Integer::sum));
        records().forEach(type -> surplus.merge(Sentences.key(type), -1, Integer::sum));
        Arrays.stream(Fact.Word.values()).forEach(word -> surplus.merge(Sentences.key(word), -1, Integer::sum));
        surplus.values().removeIf(count -> count == 0);
        assertEquals(Map.of(), surplus, "sentences more (1) or fewer (-1) than records");
    }

    @Test
    void noTwoSentencesShareAName() {
        List<String> keys = new ArrayList<>(lines().stream().map(AdviceSentencesTest::key).toList());
        new TreeSet<>(keys).forEach(keys::remove);
        assertEquals(List.of(), keys);
    }

    @Test
    void everySentenceShowsComponentsOfItsRecord() {
        Map<String, Set<String>> known = new HashMap<>();
        records().forEach(type -> known.put(Sentences.key(type), names(type)));
        List<String> unknown = new ArrayList<>();
        for (String line : lines()) {
            for (Matcher place = PLACE.matcher(line); place.find();) {
                if (!known.getOrDefault(key(line), Set.of()).contains(place.group(1))) {
                    unknown.add(key(line) + " " + place.group());
                }
            }
        }
        assertEquals(List.of(), unknown);
    }

    @Test
    void everyMeasureFitsItsComponent() {
        List<String> unfit = new ArrayList<>();
        for (Class<?> type : records()) {
            for (RecordComponent component : type.getRecordComponents()) {
                In in = component.getAnnotation(In.class);
                if (!fits(component.getType(), in == null ? null : in.value())) {
                    unfit.add(type.getSimpleName() + " " + component);
                }
            }
        }
        assertEquals(List.of(), unfit);
    }

    private static boolean fits(Class<?> type, Measure measure) {
        if (measure == null) {
            return PLAIN.contains(type) || type == Season.Stage.class;
        }
        return measure == Measure.DAY_OF_YEAR ? type == LocalDate.class : NUMBERS.contains(type);
    }

    @Test
    void everyTopicHoldsRecords() {
        Class<?>[] topics = Advice.class.getPermittedSubclasses();
        assertEquals(List.of(), Arrays.stream(topics).filter(topic -> records(topic).isEmpty()).toList());
    }

    private static Set<String> names(Class<?> type) {
        Set<String> names = new TreeSet<>();
        Stream.of(type.getRecordComponents()).forEach(component -> names.add(component.getName()));
        return names;
    }

    private static String key(String line) {
        return line.substring(0, line.indexOf('=')).strip();
    }

    private static List<String> lines() {
        return Stream.of("pictures", "day", "drawings").map(file -> Sources.read(Path.of("templates/sentences-" + file + ".txt")))
                .flatMap(String::lines).filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    }
}
