package understorey.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import understorey.plan.Share;

/** Reads an audience, written as in a plan. */
final class Audiences implements ITypeConverter<Share.Audience> {

    @Override
    public Share.Audience convert(String word) {
        for (Share.Audience audience : Share.Audience.values()) {
            if (StaleFiles.word(audience).equals(word)) {
                return audience;
            }
        }
        throw new TypeConversionException("'" + word + "' is not an audience; use private, party or public");
    }
}
