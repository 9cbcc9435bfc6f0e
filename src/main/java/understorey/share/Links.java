package understorey.share;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Addresses in a text that no author has reviewed: with a scheme, or a host with a path, however they are encoded. */
final class Links {

    private static final String REST = "[^\\s)>\\]\"']+";
    private static final Pattern LINK = Pattern.compile("(?iu)(?:\\bhttps?:|\\bwww\\.|(?<![\\p{L}\\d.-])[\\p{L}\\d-]+"
            + "(?:\\.[\\p{L}\\d-]+)*\\.\\p{L}{2,}\\.?(?::\\d+)?[/?#])" + REST);

    private final List<String> reviewed;

    Links(List<String> reviewed) {
        this.reviewed = reviewed;
    }

    /** An address that is reviewed as it is written is not read a second time in its decoded form. */
    Set<String> in(String text) {
        String rest = LINK.matcher(text).replaceAll(link -> reviewed.contains(link.group()) ? " "
                : Matcher.quoteReplacement(link.group()));
        return PlainText.found(LINK, PlainText.address(rest), link -> !reviewed.contains(link.group()))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
