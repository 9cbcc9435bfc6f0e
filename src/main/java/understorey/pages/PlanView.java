package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.kit.Intent;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.plan.Share;
import understorey.plan.Trip;

/**
 * A trip in words, for the plan page, the field sheet and the Markdown twin.
 *
 * @param essentials the day in five lines
 * @param siteHref   of the site's page, seen from the trip's folder
 * @param gearHref   of the bag's page; null for a bag written inside the trip
 * @param sky        expected; null without a forecast or a word for the sky
 * @param horizon    what the sun must clear there
 * @param sunlit     when the sun reaches each place of pictures, in one line
 * @param story      as written
 * @param shortCautions their first sentences without law, for the field sheet
 * @param contact    who knows; null if none is named or the page is public
 * @param findings   what the author should know before going, warnings first
 * @param season     when to go, and why
 * @param located    a calendar and waypoints go with it
 */
public record PlanView(TemplateHTMLOutputModel css, String title, String slug, String series, String date,
                       String arrive, String leave, String arriveDefault, boolean leaveAssumed,
                       String audience, boolean audienceAssumed, String gear, String siteHref, String gearHref,
                       List<Row> essentials, LightView light, String sky, List<SpotView> places, String horizon, String sunlit, List<ShotView> shots, List<ShotView> storyboard, List<String> gaps,
                       String story, TemplateHTMLOutputModel storyHtml, OrderView order,
                       Kit kit, PlaceView place, List<String> cautions,
                       List<String> shortCautions, String contact, List<Remark> findings,
                       SeasonView season, boolean located) {

    /** What to carry. */
    public record Kit(List<Item> take, List<Item> leave, List<String> missing, List<Row> companions, String weight,
                      String unweighed, String cards, String batteries) {
    }

    /** One thing; for what stays at home, {@code uses} says why. */
    public record Item(String name, String uses, String weight) {
    }

    /** A finding. */
    public record Remark(boolean warning, String text) {
    }

    static PlanView of(Brief brief, TemplateHTMLOutputModel css, Sentences sentences, Prose prose) {
        Trip trip = brief.trip();
        List<ShotView> shots = new ArrayList<>();
        brief.shots().forEach(shot -> shots.add(ShotView.of(brief, shot, sentences, prose)));
        List<ShotView> storyboard = new ArrayList<>();
        for (Intent intent : brief.story().sequence()) {
            storyboard.add(shots.get(brief.shot(intent.shot().name()).number() - 1));
        }
        List<String> cautions = sentences.of(brief.cautions());
        Kit kit = kit(brief, sentences);
        LightView light = LightView.of(brief, sentences);
        List<SpotView> places = SpotView.of(brief, sentences);
        String horizon = horizon(places);
        String sunlit = sunlit(places);
        List<Remark> findings = findings(brief, sentences);
        return new PlanView(css, trip.title(), trip.slug(), trip.series(), Words.day(trip, brief.date()),
                Words.clock(brief.order().arrive()), Words.clock(brief.order().leave()),
                arriveDefault(brief), brief.day().hours().assumed().contains("leave"),
                audience(trip), trip.share() == null, trip.gear().name(),
                "../sites/" + trip.site().slug() + ".html",
                trip.gear().slug() == null ? null : "../gear/" + trip.gear().slug() + ".html",
                essentials(brief, horizon + ": " + sunlit, kit, sentences), light, sky(brief),
                places, horizon, sunlit, shots, storyboard, sentences.of(brief.story().gaps()), trip.story(),
                Templates.html(prose.html(trip.story())), OrderView.of(brief, sentences),
                kit, PlaceView.of(trip.site(), trip.precision(), trip.sparesThePlace(), prose),
                cautions, leads(outdoors(brief, sentences)), contact(trip), findings,
                SeasonView.of(brief, sentences), !trip.hidesTheDay());
    }

    private static String sky(Brief brief) {
        if (brief.assumed().contains("sky")) {
            return null;
        }
        return brief.trip().forecast().isEmpty() ? "a " + Words.word(brief.trip().sky()) + " sky" : "the forecast sky";
    }

    private static String horizon(List<SpotView> places) {
        Set<String> horizons = new LinkedHashSet<>();
        places.forEach(place -> horizons.add(place.horizon()));
        return horizons.size() == 1 ? horizons.iterator().next() : "the skyline";
    }

    /** By place, those together that have the same hours. */
    private static String sunlit(List<SpotView> places) {
        Map<String, String> names = new LinkedHashMap<>();
        for (SpotView place : places) {
            String when = place.sunlit() == null ? "never" : place.sunlit();
            String others = names.get(when);
            names.put(when, others == null ? place.name() : others + ", " + place.name());
        }
        if (places.size() == 1) {
            return names.keySet().iterator().next();
        }
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, String> line : names.entrySet()) {
            lines.add(line.getValue() + " " + line.getKey());
        }
        return String.join("; ", lines);
    }

    /** The cautions of the way; law is read at home. */
    private static List<String> outdoors(Brief brief, Sentences sentences) {
        return brief.cautions().stream().filter(caution -> !(caution instanceof CautionAdvice.PlantLaw)).map(sentences::of).toList();
    }

    /** The first sentence of each, what fits on the sheet: a full stop before a small letter is an abbreviation's. */
    static List<String> leads(List<String> texts) {
        List<String> leads = new ArrayList<>();
        for (String text : texts) {
            int stop = text.indexOf(". ");
            while (stop >= 0 && stop + 2 < text.length() && !Character.isUpperCase(text.charAt(stop + 2))) {
                stop = text.indexOf(". ", stop + 2);
            }
            leads.add(stop < 0 ? text : text.substring(0, stop + 1));
        }
        return leads;
    }

    private static String audience(Trip trip) {
        return Words.audience(trip.audience()) + ", " + switch (trip.precision()) {
            case EXACT -> "exact position";
            case COARSE -> "approximate position";
            case HIDDEN -> "hidden position";
        };
    }

    /** Where a default arrival comes from; null for one that the author wrote. */
    private static String arriveDefault(Brief brief) {
        if (!brief.day().hours().assumed().contains("arrive")) {
            return null;
        }
        return brief.day().sun().civilDawn() != null ? "civil dawn" : "two hours before solar noon";
    }

    private static String contact(Trip trip) {
        if (trip.contact() == null || trip.audience() == Share.Audience.PUBLIC) {
            return null;
        }
        String tell = trip.contact().tell() == null ? "" : trip.contact().tell();
        return trip.contact().backBy() == null ? tell
                : tell + (tell.isEmpty() ? "" : "; ") + "check-in by " + trip.contact().backBy();
    }

    private static List<Row> essentials(Brief brief, String sunlit, Kit kit, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("When", Words.day(brief.trip(), brief.date()) + ", " + Words.clock(brief.order().arrive()) + " to "
                + Words.clock(brief.order().leave()) + "; sun above " + sunlit));
        Set<String> spots = new LinkedHashSet<>();
        for (TimedShot shot : brief.timed()) {
            if (shot.intent().shot().spot() != null) {
                spots.add(shot.intent().shot().spot());
            }
        }
        rows.add(new Row("Where", brief.trip().site().name() + (spots.isEmpty() ? "" : ": " + String.join(", ", spots))));
        rows.add(new Row(brief.trip().hidesTheDay() ? "Why then" : "Why this day", SeasonView.why(brief, sentences)));
        List<String> carried = new ArrayList<>();
        for (Item item : kit.take()) {
            carried.add(item.name());
        }
        rows.add(new Row("Carry", kit.take().isEmpty() ? "this bag cannot do these pictures"
                : kit.weight() + ": " + String.join(", ", carried)));
        rows.add(new Row("What could spoil it", String.join(" ", sentences.of(brief.spoilers()))));
        return rows;
    }

    private static Kit kit(Brief brief, Sentences sentences) {
        Packing packing = brief.packing();
        return new Kit(items(packing.take(), brief, sentences), items(packing.leave(), brief, sentences),
                sentences.of(packing.missing()), companions(brief), Words.weight(packing.weightG()),
                packing.unweighed() == 0 ? null : String.valueOf(packing.unweighed()),
                packing.cardGb() == null ? null : Words.number(packing.cardGb(), 1) + " GB for about "
                        + packing.frames() + " RAW frames",
                packing.batteries() == null ? null : String.valueOf(packing.batteries()));
    }

    /** What each companion carries, in one line. */
    private static List<Row> companions(Brief brief) {
        List<Row> rows = new ArrayList<>();
        for (CompanionBag bag : brief.companionBags()) {
            List<String> things = new ArrayList<>();
            for (Packing.Item item : bag.take()) {
                things.add(item.name() + " (" + pictures(item, brief) + ")");
            }
            rows.add(new Row(bag.name(), things.isEmpty() ? "nothing in that bag can do these pictures"
                    : String.join(", ", things) + "; " + Words.weight(bag.weightG()) + " in total"));
        }
        return rows;
    }

    private static String pictures(Packing.Item item, Brief brief) {
        List<Integer> numbers = new ArrayList<>();
        for (String shot : item.shots()) {
            numbers.add(brief.shot(shot).number());
        }
        return Words.pictures(numbers);
    }

    private static List<Item> items(List<Packing.Item> items, Brief brief, Sentences sentences) {
        List<Item> worded = new ArrayList<>();
        for (Packing.Item item : items) {
            String uses = item.why() != null ? sentences.of(item.why())
                    : item.shots().isEmpty() ? "" : pictures(item, brief);
            worded.add(new Item(item.name(), uses, item.weightG() == null ? Words.NONE : Words.weight(item.weightG())));
        }
        return worded;
    }

    static List<Remark> findings(Brief brief, Sentences sentences) {
        List<Remark> remarks = new ArrayList<>();
        for (boolean warning : List.of(true, false)) {
            for (Advice finding : brief.findings()) {
                if (warning == (finding.severity() == Advice.Severity.WARNING)) {
                    remarks.add(new Remark(warning, sentences.of(finding)));
                }
            }
        }
        return remarks;
    }
}
