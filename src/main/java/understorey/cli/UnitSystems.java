package understorey.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import understorey.plan.Display;

/** Reads a system of units, written as in a plan. */
final class UnitSystems implements ITypeConverter<Display.UnitSystem> {

    static final String HELP = "units for all pages and lists: metric or imperial (default: those of each trip)";

    @Override
    public Display.UnitSystem convert(String word) {
        return switch (word) {
            case "metric" -> Display.UnitSystem.METRIC;
            case "imperial" -> Display.UnitSystem.IMPERIAL;
            default -> throw new TypeConversionException("'" + word + "' is not a system of units; use metric or imperial");
        };
    }
}
