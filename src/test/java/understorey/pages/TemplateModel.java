package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.io.IOException;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.pages.html.PlanView;
import understorey.pages.html.SheetPage;

/** What templates see, as Markdown: the records of the pages and what their doc comments say of each component. */
final class TemplateModel {

    static final Map<String, Class<?>> PAGES = new LinkedHashMap<>();

    static {
        PAGES.put("plan.ftl", PlanView.class);
        PAGES.put("field-sheet.ftlh", SheetPage.class);
        PAGES.put("index.ftlh", IndexPage.class);
        PAGES.put("site.ftlh", SharedPages.PlacePage.class);
        PAGES.put("bag.ftlh", SharedPages.BagPage.class);
        PAGES.put("subjects.ftlh", SharedPages.SubjectsPage.class);
        PAGES.put("methods.ftl", MethodsPage.class);
        PAGES.put("format.ftl", FormatPage.class);
        PAGES.put("chapter.ftlh", Manual.ChapterPage.class);
        PAGES.put("scouting.ftlh", ScoutingPage.class);
    }

    private final Deque<Class<?>> due = new ArrayDeque<>();
    private final Set<Class<?>> seen = new LinkedHashSet<>(PAGES.values());
    private final StringBuilder text = new StringBuilder();

    static String markdown() throws IOException {
        TemplateModel model = new TemplateModel();
        for (Map.Entry<String, Class<?>> page : PAGES.entrySet()) {
            model.add(name(page.getValue()), page.getValue(), "`page` in `" + page.getKey() + "`. ");
        }
        while (!model.due.isEmpty()) {
            Class<?> type = model.due.remove();
            model.add(name(type), type, "");
        }
        return model.text.toString();
    }

    private void add(String title, Class<?> type, String lead) throws IOException {
        String source = source(type);
        text.append("\n### ").append(title.substring(0, 1).toUpperCase(Locale.ROOT)).append(title.substring(1)).append("\n\n");
        String about = lead + sentence(source);
        if (!about.isBlank()) {
            text.append(about.strip()).append("\n\n");
        }
        Map<String, String> said = parameters(source);
        for (RecordComponent component : type.getRecordComponents()) {
            String meaning = said.getOrDefault(component.getName(), "");
            text.append("- `").append(component.getName()).append("`: ").append(type(component.getAnnotatedType()))
                    .append(meaning.isEmpty() ? "" : "; " + meaning).append('\n');
        }
    }

    private String type(AnnotatedType annotated) {
        String nothing = annotated.isAnnotationPresent(Nullable.class) ? " or nothing" : "";
        if (annotated instanceof AnnotatedParameterizedType of) {
            AnnotatedType[] inside = of.getAnnotatedActualTypeArguments();
            Class<?> outer = (Class<?>) ((ParameterizedType) annotated.getType()).getRawType();
            if (!List.class.isAssignableFrom(outer)) {
                throw new AssertionError("no template can read " + annotated);
            }
            return "list of " + type(inside[0]) + nothing;
        }
        return named((Class<?>) annotated.getType()) + nothing;
    }

    private String named(Class<?> type) {
        if (type == String.class) {
            return "text";
        }
        if (type == boolean.class) {
            return "yes or no";
        }
        if (type == TemplateHTMLOutputModel.class) {
            return "ready HTML";
        }
        if (type == int.class || type == double.class) {
            return "number";
        }
        if (!type.isRecord()) {
            throw new AssertionError("no template can read a " + type);
        }
        if (seen.add(type)) {
            due.add(type);
        }
        return "[" + name(type) + "](#" + name(type).toLowerCase(Locale.ROOT).replace(' ', '-') + ")";
    }

    /** {@code SheetShot.Setting} reads as sheet shot setting. */
    private static String name(Class<?> type) {
        for (Map.Entry<String, Class<?>> page : PAGES.entrySet()) {
            if (page.getValue() == type) {
                return page.getKey().replaceFirst("\\..*", "") + " page";
            }
        }
        String own = type.getName().substring(type.getPackageName().length() + 1).replace('$', ' ');
        return Arrays.stream(own.split("(?<=[a-z])(?=[A-Z])")).collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
    }

    /** The doc comment of a record, without its stars. */
    private static String source(Class<?> type) throws IOException {
        Class<?> outer = type;
        while (outer.getEnclosingClass() != null) {
            outer = outer.getEnclosingClass();
        }
        String file = Files.readString(Path.of("src", "main", "java", outer.getName().replace('.', '/') + ".java"));
        Matcher comment = Pattern.compile("(?s)/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:(?:public|private|static|final) )*record " + type.getSimpleName() + "\\b").matcher(file);
        return comment.find() ? comment.group(1).replaceAll("(?m)^\\s*\\*? ?", "") : "";
    }

    private static String sentence(String comment) {
        return plain(comment.split("(?m)^@", 2)[0]);
    }

    private static Map<String, String> parameters(String comment) {
        Map<String, String> said = new LinkedHashMap<>();
        Pattern.compile("(?ms)^@param\\s+(\\w+)\\s+(.*?)(?=^@|\\z)").matcher(comment).results().forEach(found -> said.put(found.group(1), plain(found.group(2))));
        return said;
    }

    private static String plain(String comment) {
        return comment.replaceAll("\\{@code ([^}]*)}", "`$1`").replaceAll("\\{@link (?:[\\w.#]+ )?([^}]*)}", "$1").replaceAll("\\bnull\\b", "nothing").replaceAll("\\s+", " ").strip();
    }
}
