package understorey.publish;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import understorey.pages.Page;

/** Follows every internal link and anchor of the HTML pages. */
public final class Links {

    private Links() {
    }

    /** One line a link that leads nowhere, with the page that it stands on. */
    public static List<String> broken(List<Page> pages) {
        Map<String, Set<String>> anchors = new HashMap<>();
        for (Page page : pages) {
            anchors.put(page.path(), page.path().endsWith(".html") ? all(page.content(), " id=\"") : Set.of());
        }
        List<String> broken = new ArrayList<>();
        for (Page page : pages) {
            if (page.path().endsWith(".html")) {
                for (String href : all(page.content(), " href=\"")) {
                    if (!leads(page.path(), href, anchors)) {
                        broken.add(page.path() + ": the link '" + href + "' leads nowhere");
                    }
                }
            }
        }
        return broken;
    }

    private static boolean leads(String from, String href, Map<String, Set<String>> anchors) {
        int hash = href.indexOf('#');
        String file = hash < 0 ? href : href.substring(0, hash);
        if (file.indexOf(':') >= 0) {
            return true;
        }
        String target = file.isEmpty() ? from : resolve(from, file);
        return anchors.containsKey(target) && (hash < 0 || anchors.get(target).contains(href.substring(hash + 1)));
    }

    private static String resolve(String from, String href) {
        List<String> parts = new ArrayList<>(List.of(from.split("/")));
        parts.remove(parts.size() - 1);
        for (String part : href.split("/")) {
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

    private static Set<String> all(String html, String attribute) {
        Set<String> values = new HashSet<>();
        int at = html.indexOf(attribute);
        while (at >= 0) {
            int start = at + attribute.length();
            int end = html.indexOf('"', start);
            values.add(html.substring(start, end).replace("&amp;", "&"));
            at = html.indexOf(attribute, end);
        }
        return values;
    }
}
