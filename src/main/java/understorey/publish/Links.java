package understorey.publish;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import understorey.pages.Page;

/** Checks every internal link and anchor of the HTML pages. */
public final class Links {

    private Links() {
    }

    /** A broken link, and its page. */
    public record Broken(String page, String link) {
    }

    /**
     * What the check needs of a page, so that the page itself need not be kept.
     *
     * @param anchors that links may lead to
     * @param links   of the page; none of a file that is no HTML
     */
    public record Seen(String page, Set<String> anchors, Set<String> links) {

        /** Looks through a page. */
        public static Seen of(Page page) {
            if (!page.path().endsWith(".html")) {
                return new Seen(page.path(), Set.of(), Set.of());
            }
            String html = page.content();
            Set<String> links = all(html, "href");
            links.addAll(all(html, "src"));
            return new Seen(page.path(), shared(all(html, "id")), shared(links));
        }

        /** Pages have most of these words in common: each is kept once. */
        private static Set<String> shared(Set<String> words) {
            return words.stream().map(String::intern).collect(Collectors.toUnmodifiableSet());
        }
    }

    /**
     * The broken links, in the order of the pages.
     *
     * @param elsewhere folders whose pages are not checked, and count as present
     */
    public static List<Broken> broken(List<Seen> pages, Set<String> elsewhere) {
        Map<String, Set<String>> anchors = new HashMap<>();
        pages.forEach(page -> anchors.put(page.page(), page.anchors()));
        List<Broken> broken = new ArrayList<>();
        for (Seen page : pages) {
            for (String link : new TreeSet<>(page.links())) {
                if (!leads(page.page(), link, anchors, elsewhere)) {
                    broken.add(new Broken(page.page(), link));
                }
            }
        }
        return broken;
    }

    private static boolean leads(String from, String link, Map<String, Set<String>> anchors, Set<String> elsewhere) {
        if (link.startsWith("//") || hasScheme(link)) {
            return true;
        }
        int hash = link.indexOf('#');
        String address = hash < 0 ? link : link.substring(0, hash);
        // What follows a question mark is for a server: the file is the same.
        int query = address.indexOf('?');
        String file = decoded(query < 0 ? address : address.substring(0, query));
        String target = file.isEmpty() ? from : resolve(from, file);
        int slash = target.indexOf('/');
        if (slash > 0 && elsewhere.contains(target.substring(0, slash))) {
            return true;
        }
        if (!anchors.containsKey(target)) {
            return false;
        }
        String anchor = hash < 0 ? "" : decoded(link.substring(hash + 1));
        // Every page has a top without an anchor for it (HTML Living Standard, 7.4.6.4).
        return anchor.isEmpty() || anchor.equalsIgnoreCase("top") || anchors.get(target).contains(anchor);
    }

    /** Whether a link has a scheme before its first colon: letters, digits, +, - and dots (RFC 3986, 3.1). */
    private static boolean hasScheme(String link) {
        int colon = link.indexOf(':');
        for (int i = 0; i < colon; i++) {
            char c = link.charAt(i);
            if (!(c < 128 && Character.isLetterOrDigit(c) || c == '+' || c == '-' || c == '.')) {
                return false;
            }
        }
        return colon > 0;
    }

    private static String decoded(String link) {
        try {
            return URLDecoder.decode(link.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notEncoded) {
            return link;
        }
    }

    private static String resolve(String from, String link) {
        List<String> parts = new ArrayList<>(List.of(from.split("/")));
        parts.remove(parts.size() - 1);
        for (String part : link.split("/")) {
            if (part.equals("..")) {
                if (parts.isEmpty()) {
                    return "";
                }
                parts.remove(parts.size() - 1);
            } else if (!part.equals(".")) {
                parts.add(part);
            }
        }
        return String.join("/", parts);
    }

    /** Values of an attribute in the whole page, in quotes of either kind; a value without a closing quote is skipped. */
    private static Set<String> all(String html, String attribute) {
        Set<String> values = new TreeSet<>();
        String start = attribute + "=";
        for (int at = html.indexOf(start); at >= 0; at = html.indexOf(start, at + start.length())) {
            int quote = at + start.length();
            if (at > 0 && Character.isWhitespace(html.charAt(at - 1)) && quote < html.length()
                    && (html.charAt(quote) == '"' || html.charAt(quote) == '\'')) {
                int end = html.indexOf(html.charAt(quote), quote + 1);
                if (end > 0) {
                    values.add(html.substring(quote + 1, end).replace("&quot;", "\"").replace("&#39;", "'")
                            .replace("&amp;", "&"));
                }
            }
        }
        return values;
    }
}
