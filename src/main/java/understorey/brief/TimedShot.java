package understorey.brief;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.exposure.Settings;
import understorey.kit.CoverTrade;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.ShotFit;
import understorey.kit.Verdict;
import understorey.light.LightAt;
import understorey.light.Outlook;
import understorey.light.PolariserEffect;
import understorey.light.SunDirection;
import understorey.light.WhiteBalance;
import understorey.plan.Filter;
import understorey.plan.Role;
import understorey.plan.SkyWord;
import understorey.visit.ExpectedSky;
import understorey.sky.Interval;
import understorey.weather.Weather;

/**
 * A picture with its light, its time and its settings.
 *
 * @param time         when it is taken; null when the visit leaves no time for it
 * @param light        at its spot in the middle of that time, or of the visit
 * @param weather      then, as far as the forecast goes
 * @param sunlight     the direction of the sun; null when the picture faces nowhere in particular
 * @param wished       how far the light is what it wished for, in the sky expected or, without a forecast, in each;
 *                     empty without a wish
 * @param polariser    what one would do; null when none was asked for, or the picture faces nowhere in particular
 * @param mist         what mist changes, and what to do without it; empty for a picture that does not wish for mist
 * @param whiteBalance for the sky expected; null without a forecast
 * @param cover        how dense the flowers look, through this lens and the bag's others; null where that is unknown
 * @param settings     for the sky expected, and for {@link #settingsSky} without a forecast; null when no camera can take it
 * @param otherSkies   the same picture under a clear, a broken and an overcast sky
 * @param ifMist       the same picture in mist that may well come; null where it may not, and where the settings are for mist already
 * @param otherHours   the same picture an hour earlier and an hour later, between the first picture and the start back, under
 *                     the sky expected then, or a broken one
 */
public record TimedShot(FittedShot fitted, @Nullable Interval time, LightAt light, Weather weather, @Nullable Sunlight sunlight,
                        List<Wished> wished, @Nullable PolariserEffect polariser, List<Advice> mist, @Nullable WhiteBalance whiteBalance,
                        @Nullable CoverTrade cover, @Nullable Settings settings, List<Other> otherSkies,
                        @Nullable Other ifMist, List<Other> otherHours) {

    /**
     * The sun as a picture meets it.
     *
     * @param now     null when the sun is down
     * @param reasons what to make of it
     * @param overDay from which side the light comes, over the hours in which the sun clears the land
     */
    public record Sunlight(@Nullable SunDirection now, List<Advice> reasons, List<SunDirection.Stretch> overDay) {
    }

    /** The light wished for; under one sky without a forecast, else {@code sky} is null. */
    public record Wished(@Nullable SkyWord sky, Outlook outlook) {
    }

    /** What is metered, settings and a white balance to begin with, if the light differs; {@code sky} is null for the one expected. */
    public record Other(@Nullable SkyWord sky, ZonedDateTime time, LightAt.Metered metered, Settings settings, WhiteBalance whiteBalance) {
    }

    /** In the author's order, from 1. */
    public int number() {
        return fitted.number();
    }

    public Intent intent() {
        return fitted.fit().intent();
    }

    /** The lenses tried on it. */
    public ShotFit fit() {
        return fitted.fit();
    }

    /** True for a picture of many flowers; false for one of a plant or a flower. */
    public boolean ofCarpet() {
        return intent().role() != Role.DETAIL && intent().role() != Role.CLOSING;
    }

    /** True when the settings are for mist. */
    public boolean countsOnMist() {
        return settings != null && settings.inMist();
    }

    /** True when the weather at its time is known. */
    public boolean skyKnown() {
        return weather.okta() != null;
    }

    /** The sky that the settings are for without a forecast; null with one. */
    public @Nullable SkyWord settingsSky() {
        return skyKnown() ? null : bestSky(wished);
    }

    /** The sky in which the light suits a picture best; the middle one where none is better. */
    static SkyWord bestSky(List<Wished> wished) {
        return wished.stream().min(Comparator.comparing((Wished light) -> light.outlook().grade()).thenComparing(light -> light.sky() != ExpectedSky.MIDDLE))
                .map(Wished::sky).orElse(ExpectedSky.MIDDLE);
    }

    /** The outlook in the sky expected; null without a wish without a forecast. */
    public @Nullable Outlook outlook() {
        return wished.size() == 1 && wished.get(0).sky() == null ? wished.get(0).outlook() : null;
    }

    /** Taken in poor light, under the sky expected or under every sky without a forecast; false without a wish. */
    public boolean poorLight() {
        return time() != null && !wished.isEmpty() && wished.stream().allMatch(light -> light.outlook().grade() == Outlook.Grade.POOR);
    }

    /** What would help; nothing where the picture can be had as it was asked for. */
    public List<Advice> helps() {
        if (verdict() == Verdict.FITS) {
            return List.of();
        }
        List<Advice> helps = new ArrayList<>(fit().helps());
        if (settings != null) {
            helps.addAll(settings.helps());
        }
        return List.copyOf(helps);
    }

    /** Neutral density filters and rings to have by: for the sky expected, or for any sky without a forecast. */
    public List<Filter> dimming() {
        if (settings == null || skyKnown()) {
            return settings == null ? List.of() : settings.dimming();
        }
        return otherSkies.stream().flatMap(other -> other.settings().dimming().stream()).distinct().toList();
    }

    /** Lens and light together. */
    public Verdict verdict() {
        LensFit best = fitted.fit().best();
        return best == null || settings == null ? Verdict.CANNOT
                : (settings.stack() == null ? best.verdict() : best.stacked()).and(settings.verdict());
    }
}
