package understorey.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import understorey.plan.Share;

/** Reads an audience in the words of the plan's format. */
final class Audiences implements ITypeConverter<Share.Audience> {

    @Override
    public Share.Audience convert(String word) {
        for (Share.Audience audience : Share.Audience.values()) {
            if (Kept.word(audience).equals(word)) {
                return audience;
            }
        }
        throw new TypeConversionException("'" + word + "' is no audience: private, party or public");
    }
}
