package understorey.yaml.value;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Kind of a quantity, with the units that fit. The first unit is the base unit. */
public enum Dimension {
    /** In metres. The inch is 25.4 mm (international yard and pound agreement, 1959). */
    LENGTH("a length", "0.4 m", unit(1, 1, "m"), unit(1, 1000, "mm"), unit(1, 100, "cm"), unit(1000, 1, "km"),
            unit(254, 10_000, "in"), unit(3048, 10_000, "ft"), unit(9144, 10_000, "yd"), unit(1_609_344, 1000, "mi")),
    /** In millimetres. */
    SMALL_LENGTH("a length", "50 mm", unit(1, 1, "mm"), unit(10, 1, "cm"), unit(1000, 1, "m"), unit(254, 10, "in"),
            unit(3048, 10, "ft")),
    /** Depth of water, in millimetres. */
    RAIN("an amount of rain", "2 mm", unit(1, 1, "mm"), unit(254, 10, "in")),
    /** In grams. The pound is 453.592 37 g, the ounce a sixteenth (agreement of 1959). */
    MASS("a weight", "430 g", unit(1, 1, "g"), unit(1000, 1, "kg"), unit(45_359_237, 100_000, "lb"),
            unit(45_359_237, 1_600_000, "oz")),
    /** In degrees Celsius. */
    TEMPERATURE("a temperature", "6 °C", unit(1, 1, "°C", "C"), new Unit(-32, 5, 9, "°F", "F")),
    /** In metres per second. The knot is 1852 m per hour. */
    SPEED("a speed", "3 m/s", unit(1, 1, "m/s"), unit(5, 18, "km/h"), unit(44_704, 100_000, "mph"),
            unit(1852, 3600, "kn", "kt")),
    /** As a fraction, 0 to 1. */
    SHARE("a share", "60 %", unit(1, 100, "%")),
    STOPS("a number of stops", "2 stops", unit(1, 1, "stops", "stop")),
    PIXELS("a number of pixels", "24 Mpx", unit(1, 1, "Mpx", "MP")),
    /** In decimal megabytes, as cards and files are sold and shown. */
    FILE_SIZE("a file size", "28 MB", unit(1, 1, "MB"), unit(1, 1000, "kB"), unit(1000, 1, "GB")),
    /** In decimal gigabytes. */
    CARD_SIZE("a card size", "64 GB", unit(1, 1, "GB"), unit(1, 1000, "MB"), unit(1000, 1, "TB")),
    /** In seconds. */
    DURATION("a length of time", "25 min", unit(1, 1, "s"), unit(60, 1, "min"), unit(3600, 1, "h")),
    /** In seconds; a part of a second may be a fraction, {@code 1/250 s}. */
    SHUTTER("a shutter speed", "1/250 s", unit(1, 1, "s"), unit(60, 1, "min")),
    FRAMES("a number of frames", "400 frames", unit(1, 1, "frames", "frame")),
    DIOPTRES("a power", "2 dpt", unit(1, 1, "dpt", "D")),
    /** In stems per square metre. */
    DENSITY("a density", "80 /m2", unit(1, 1, "/m2", "/m²"), unit(100_000_000, 9_290_304, "/ft2", "/ft²")),
    /** Trees per hectare. The acre is 4046.856 422 4 m². */
    TREES("a number of trees per hectare", "300 per ha", unit(1, 1, "per ha", "/ha", "per hectare"),
            unit(100_000_000_000., 40_468_564_224., "per acre", "/acre"));

    /** A unit with its conversion: value in the base unit = (number + shift) × times / over. */
    public record Unit(double shift, double times, double over, String... names) {

        double held(double number) {
            return (number + shift) * times / over;
        }
    }

    private final String described;
    private final String example;
    private final Unit[] units;

    Dimension(String described, String example, Unit... units) {
        this.described = described;
        this.example = example;
        this.units = units;
    }

    private static Unit unit(double times, double over, String... names) {
        return new Unit(0, times, over, names);
    }

    /** What is measured, for a sentence: "a length". */
    public String described() {
        return described;
    }

    /** Fix for a text that is no quantity. */
    public String example() {
        return "for example " + example;
    }

    /** Fix for a number without a unit. */
    public String missing(String number) {
        return units.length == 1 ? "write " + number + " " + units[0].names()[0] : "add a unit: " + unitList();
    }

    /** The units that fit, for a sentence: "mm, cm or m". */
    public String unitList() {
        List<String> names = unitNames();
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    /** Unit of that name; null if it does not fit. Upper and lower case differ: MB is not mb. */
    public @Nullable Unit unit(String name) {
        return Arrays.stream(units).filter(unit -> List.of(unit.names()).contains(name)).findFirst().orElse(null);
    }

    /** True if any dimension has a unit of that name. */
    public static boolean anyHas(String name) {
        return Arrays.stream(values()).anyMatch(dimension -> dimension.unit(name) != null);
    }

    /** One name per unit. */
    public List<String> unitNames() {
        return Arrays.stream(units).map(unit -> unit.names()[0]).toList();
    }

    /** A value in the base unit, for a sentence. */
    public String show(double value) {
        if (this == SHARE) {
            return Numeral.show(value * 100) + " %";
        }
        if (this == DURATION && value >= 3600) {
            return Numeral.show(value / 3600) + " h";
        }
        if (this == SHUTTER && value > 0 && value < 1) {
            return "1/" + Numeral.show(1 / value) + " s";
        }
        return Numeral.show(value) + " " + units[0].names()[0];
    }
}
