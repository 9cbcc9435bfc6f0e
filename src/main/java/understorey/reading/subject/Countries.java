package understorey.reading.subject;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Codes of countries, ISO 3166-1 alpha-2. */
public final class Countries {

    private static final List<String> CODES = List.of(Locale.getISOCountries());

    private Countries() {
    }

    public static boolean isCode(String text) {
        return CODES.contains(text);
    }

    /** Fix for a text that is no code: the code of a country with that English name. */
    public static String help(String text) {
        // ISO 3166-1 reserves UK for the country whose code is GB.
        Optional<String> meant = text.equalsIgnoreCase("UK") ? Optional.of("GB") : CODES.stream()
                .filter(code -> new Locale("", code).getDisplayCountry(Locale.ENGLISH).equalsIgnoreCase(text)).findFirst();
        return meant.map(code -> "write " + code).orElse("use the two letters of ISO 3166-1, for example GB");
    }
}
