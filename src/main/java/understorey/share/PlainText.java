package understorey.share;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A text as a reader or a browser sees it: codes decoded, marks and tags removed, one kind of blank, dash, quote, degree
 * sign and digit.
 */
final class PlainText {

    private static final Pattern ENTITY = Pattern.compile("&(?:#(\\d{1,7})|#[xX]([0-9a-fA-F]{1,6})|([a-zA-Z]{2,12}));");
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?:u|x\\{?|U000)([0-9a-fA-F]{4})\\}?");
    private static final Pattern PERCENT = Pattern.compile("(?:%[0-9a-fA-F]{2})+");
    private static final Pattern ACCENTED = Pattern.compile("([a-zA-Z])(?:acute|grave|circ|uml|tilde|cedil|ring|caron|slash)");
    private static final Pattern TAG = Pattern.compile("(?s)<!--.*?-->|</?[a-zA-Z][^>]*>");
    private static final Pattern MARKS = Pattern.compile("[*_`~\\\\\\[\\]]");
    private static final Pattern SPELT_POINT = Pattern.compile("(?i)(?<=\\d) ?\\(?"
            + "(?:dot|point|comma|punkt|komma|punto|virgule)\\)? ?(?=\\d)");
    private static final String RAISED = "\u00b2\u00b3\u00b9\u2070\u2074-\u2079";
    private static final Map<String, String> ENTITIES = Map.ofEntries(Map.entry("nbsp", " "), Map.entry("ensp", " "),
            Map.entry("emsp", " "), Map.entry("thinsp", " "), Map.entry("amp", "&"), Map.entry("deg", "°"),
            Map.entry("prime", "'"), Map.entry("Prime", "\""), Map.entry("quot", "\""), Map.entry("apos", "'"),
            Map.entry("rsquo", "'"), Map.entry("rdquo", "\""), Map.entry("minus", "-"), Map.entry("ndash", "-"),
            Map.entry("mdash", "-"), Map.entry("hyphen", "-"), Map.entry("comma", ","), Map.entry("period", "."),
            Map.entry("colon", ":"), Map.entry("num", "#"), Map.entry("lt", "<"), Map.entry("gt", ">"),
            Map.entry("shy", ""), Map.entry("zwj", ""), Map.entry("zwnj", ""), Map.entry("szlig", "ß"),
            Map.entry("aelig", "æ"), Map.entry("AElig", "Æ"), Map.entry("oelig", "œ"), Map.entry("plus", "+"),
            Map.entry("NewLine", " "), Map.entry("Tab", " "), Map.entry("commat", "@"), Map.entry("sol", "/"));

    private PlainText() {
    }

    /** What a pattern matches in a text and a test accepts, in order, looked for as it is asked for. */
    static Stream<String> found(Pattern pattern, String text, Predicate<MatchResult> test) {
        return pattern.matcher(text).results().filter(test).map(MatchResult::group);
    }

    /** The text with marks and tags removed, and with blanks instead of them: they can join or part the text around them. */
    static Set<String> forms(String text) {
        String decoded = decoded(decoded(text));
        Set<String> forms = new LinkedHashSet<>();
        for (String instead : new String[] {"", " "}) {
            String bare = MARKS.matcher(TAG.matcher(decoded).replaceAll(instead)).replaceAll(instead);
            forms.add(even(bare));
            forms.add(even(decoded));
        }
        return forms;
    }

    /** As a link follows it: codes undone, and the backslashes that Markdown drops; other marks belong to an address. */
    static String address(String text) {
        return even(decoded(decoded(text)).replaceAll("\\\\(?=\\p{Punct})", ""));
    }

    /** With digits joined that stand apart, and a point in place of its name. */
    static String joined(String text) {
        return SPELT_POINT.matcher(text).replaceAll(".").replaceAll("(?<=\\d)(?: ([.,]) ?|(\\.) )(?=\\d)", "$1$2")
                .replaceAll("(?<=(?<!\\d)\\d) (?=\\d(?!\\d))", "");
    }

    private static String decoded(String text) {
        String decoded = PERCENT.matcher(text).replaceAll(run -> Matcher.quoteReplacement(bytes(run.group())));
        decoded = ESCAPE.matcher(decoded).replaceAll(code -> Matcher.quoteReplacement(
                String.valueOf((char) Integer.parseInt(code.group(1), 16))));
        return ENTITY.matcher(decoded).replaceAll(code -> Matcher.quoteReplacement(entity(code)));
    }

    private static String bytes(String run) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (int i = 0; i < run.length(); i += 3) {
            bytes.write(Integer.parseInt(run.substring(i + 1, i + 3), 16));
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    private static String entity(java.util.regex.MatchResult code) {
        String number = code.group(1) != null ? code.group(1) : code.group(2);
        if (number != null) {
            int point = Integer.parseInt(number, code.group(1) != null ? 10 : 16);
            return Character.isValidCodePoint(point) ? Character.toString(point) : "";
        }
        Matcher accented = ACCENTED.matcher(code.group(3));
        return accented.matches() ? accented.group(1) : ENTITIES.getOrDefault(code.group(3), code.group());
    }

    /** One kind of each sign, without characters of no width. */
    private static String even(String text) {
        String apart = text.replaceAll("(?<=[" + RAISED + "])\u2070|\u2070(?=[" + RAISED + "])", "0").replace('\u02d9', '\u00b7')
                .replaceAll("(?<=\\d)(?=[\u00bc-\u00be\u2150-\u215e])", " ")
                .replaceAll("[\u00ba\u2070\u02da\u2218\u1d52\u00b0]", "°")
                .replaceAll("[\u2032\u2018\u2019\u02b9\u02bc\u00b4\u201b]", "'")
                .replaceAll("[\u2033\u201c\u201d\u201f\u02ba\u3003]", "\"");
        String composed = Normalizer.normalize(apart, Normalizer.Form.NFKC)
                .replaceAll("(?<!\\p{L})\\p{M}+", "")
                .replaceAll("(?<=\\p{Nd})[\u00b7\u2027\u22c5\u066b](?=\\p{Nd})", ".");
        StringBuilder even = new StringBuilder(composed.length());
        composed.codePoints().forEach(point -> {
            int type = Character.getType(point);
            if (Character.digit(point, 10) >= 0 && Character.isDigit(point)) {
                even.append(Character.digit(point, 10));
            } else if (type == Character.OTHER_NUMBER && Character.getNumericValue(point) >= 0) {
                even.append(Character.getNumericValue(point));
            } else if (type == Character.DASH_PUNCTUATION || point == '\u2212') {
                even.append('-');
            } else if (Character.isWhitespace(point) || Character.isSpaceChar(point)) {
                even.append(' ');
            } else if (type != Character.FORMAT && type != Character.CONTROL) {
                even.appendCodePoint(point == '\u2044' ? '/' : point);
            }
        });
        return even.toString().replaceAll(" +", " ");
    }
}
