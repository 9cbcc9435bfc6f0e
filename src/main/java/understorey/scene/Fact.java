package understorey.scene;

import java.time.LocalDate;
import java.time.Month;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.advice.In;
import understorey.advice.Measure;
import understorey.plan.Season;

/**
 * Something that a drawing says: a record, named as its line in the templates, its components named as the words in
 * braces there. Names of spots, subjects and pictures are the author's own text.
 */
public sealed interface Fact {

    /** What needs no figure. */
    enum Word implements Fact {
        NO_SUNRISE, OVERCAST, LEVEL_HORIZON, SKYLINE, SUN_VISIBLE, BEHIND_SKYLINE, BELOW_LEVEL_HORIZON_ALL_DAY,
        BEHIND_SKYLINE_ALL_DAY, CIVIL_DAWN, CIVIL_DUSK, HEAD_TORCH_OFF, HEAD_TORCH_ON, SUNRISE, SUNSET, MOONRISE, MOONSET,
        SUN_ABOVE_SKYLINE, SUN_BEHIND_SKYLINE, CLOUD_COMES, CLOUD_CLEARS, RAIN_POSSIBLE, LEAVE_LAST_SPOT, COVER_BY_FOCAL_LENGTH,
        SPOTS_NORTH_UP, NORTH, NO_WALK, LEVEL, GROUND_FILLS_FRAME, NO_GROUND, UNKNOWN_DENSITY, TONE_IS_COVER, MIST_DRAWN,
        SHADOWS_DRAWN, DROPS_DRAWN, CHOSEN_OPEN, ALL_IN_BUD, ALL_FADED,
        UPPER_LEFT, TOP_EDGE, UPPER_RIGHT, LEFT_EDGE, RIGHT_EDGE, LOWER_LEFT, BOTTOM_EDGE, LOWER_RIGHT,
        TREES_BARE, TREES_BREAK_BUD, TREES_HALF_IN_LEAF, TREES_IN_LEAF
    }

    /** Two sentences. */
    record Next(Fact first, Fact rest) implements Fact {
    }

    /** Two parts of a sentence that belong together. */
    record Both(Fact first, Fact rest) implements Fact {
    }

    /** Two items of a short list. */
    record Item(Fact first, Fact rest) implements Fact {
    }

    /** Two items of a list of longer ones. */
    record Then(Fact first, Fact rest) implements Fact {
    }

    /** A list that ends as a sentence does. */
    record Ended(Fact list) implements Fact {
    }

    record Angle(@In(Measure.DEGREES) double angle) implements Fact {
    }

    record CompassPoint(@In(Measure.COMPASS) double bearing) implements Fact {
    }

    record Share(@In(Measure.SHARE) double share) implements Fact {
    }

    record Day(@In(Measure.DAY_OF_YEAR) LocalDate day) implements Fact {
    }

    record Distance(@In(Measure.METRES) double distance) implements Fact {
    }

    /** An edge of what is sharp. */
    record FocusLimit(@In(Measure.FAR_LIMIT) double distance) implements Fact {
    }

    /** A distance to walk. */
    record WalkLength(@In(Measure.WALK_METRES) double distance) implements Fact {
    }

    /** The length of the bar of a scale. */
    record BarLength(@In(Measure.SCALE_BAR) double length) implements Fact {
    }

    record NumberedPicture(@In(Measure.COUNT) int number, String name) implements Fact {
    }

    record CoverAt(@In(Measure.SHARE) double cover, @In(Measure.MILLIMETRES) double focal) implements Fact {
    }

    record FocalLength(@In(Measure.MILLIMETRES) double focal) implements Fact {
    }

    record PlannedFocalLength(@In(Measure.MILLIMETRES) double focal) implements Fact {
    }

    /** Something and when it happens. */
    record Timed(Fact what, ZonedDateTime time) implements Fact {
    }

    record SunAt(String place) implements Fact {
    }

    record SunOff(String place) implements Fact {
    }

    record SunOver(Fact horizon, String place) implements Fact {
    }

    record BehindTrees(@In(Measure.DEGREES) double tops) implements Fact {
    }

    record LooksTowards(Fact picture, @In(Measure.BEARING) double bearing, @In(Measure.DEGREES) double width) implements Fact {
    }

    record LooksLeft(Fact picture) implements Fact {
    }

    record LooksRight(Fact picture) implements Fact {
    }

    record Bearings(@In(Measure.BEARING) double from, @In(Measure.BEARING) double to) implements Fact {
    }

    record AboveBetween(Fact horizon, Fact bearings, ZonedDateTime time, @In(Measure.DEGREES) double highest) implements Fact {
    }

    record AboveTreesBetween(@In(Measure.DEGREES) double tops, Fact bearings) implements Fact {
    }

    record NeverAboveTrees(@In(Measure.DEGREES) double tops) implements Fact {
    }

    record Hours(ZonedDateTime from, ZonedDateTime to) implements Fact {
    }

    record Taken(Fact picture, Fact hours) implements Fact {
    }

    record LightNeeded(Fact hours) implements Fact {
    }

    record BackAt(ZonedDateTime time) implements Fact {
    }

    record StraightWalk(String from, String to, @In(Measure.WALK_METRES) double distance,
                        @In(Measure.MINUTES) int minutes) implements Fact {
    }

    record SeasonOf(String subject) implements Fact {
    }

    record TripDay(@In(Measure.DAY_OF_YEAR) LocalDate day) implements Fact {
    }

    record MidMonth(Month month) implements Fact {
    }

    record FirstFlowers(@In(Measure.DAY_OF_YEAR) LocalDate day) implements Fact {
    }

    record FullFlower(@In(Measure.DAY_OF_YEAR) LocalDate day) implements Fact {
    }

    record FlowersOver(@In(Measure.DAY_OF_YEAR) LocalDate day) implements Fact {
    }

    record PastYear(String year, Fact dates) implements Fact {
    }

    record FullFlowerExpected(String year, @In(Measure.DAY_OF_YEAR) LocalDate from,
                              @In(Measure.DAY_OF_YEAR) LocalDate to, @In(Measure.DAY_OF_YEAR) LocalDate early,
                              @In(Measure.DAY_OF_YEAR) LocalDate late) implements Fact {
    }

    record Seen(@In(Measure.DAY_OF_YEAR) LocalDate day, Season.Stage stage) implements Fact {
    }

    record ChanceOnTripDay(@In(Measure.DAY_OF_YEAR) LocalDate day, @In(Measure.SHARE) double chance) implements Fact {
    }

    record ChanceInMidMonth(Month month, @In(Measure.SHARE) double chance) implements Fact {
    }

    record SideViewOf(String picture) implements Fact {
    }

    record SubjectAt(@In(Measure.METRES) double distance) implements Fact {
    }

    record SharpOver(@In(Measure.METRES) double depth) implements Fact {
    }

    record SharpFrom(@In(Measure.FAR_LIMIT) double distance) implements Fact {
    }

    record SharpTo(@In(Measure.FAR_LIMIT) double distance) implements Fact {
    }

    record SharpRange(@In(Measure.FAR_LIMIT) double from, @In(Measure.FAR_LIMIT) double to) implements Fact {
    }

    record PlantHeight(String plant, @In(Measure.METRES) double height) implements Fact {
    }

    record LensHeight(@In(Measure.METRES) double height) implements Fact {
    }

    record TiltedDown(@In(Measure.DEGREES) double tilt) implements Fact {
    }

    record TiltedUp(@In(Measure.DEGREES) double tilt) implements Fact {
    }

    record FromTheSide(@In(Measure.METRES) double height, Fact tilt, @In(Measure.METRES) double distance, Fact plant,
                       Fact sharp) implements Fact {
    }

    record FrameOf(String picture) implements Fact {
    }

    /** The whole head does not fit into the frame. */
    record FrameCoversFlower(@In(Measure.METRES) double width, @In(Measure.METRES) double height,
                             @In(Measure.METRES) double distance, @In(Measure.METRES) double flower,
                             @In(Measure.SHARE) double share) implements Fact {
    }

    record FrameCovers(@In(Measure.METRES) double width, @In(Measure.METRES) double height,
                       @In(Measure.METRES) double distance, @In(Measure.METRES) double head,
                       @In(Measure.SHARE) double share) implements Fact {
    }

    record GroundMeetsTrees(@In(Measure.SHARE) double share) implements Fact {
    }

    record GroundReachesHorizon(@In(Measure.SHARE) double share) implements Fact {
    }

    record TrunksApart(@In(Measure.WHOLE_METRES) double metres) implements Fact {
    }

    record SunPlacedInFrame(@In(Measure.SHARE) double left, @In(Measure.SHARE) double top) implements Fact {
    }

    record StemDensity(@In(Measure.STEM_DENSITY) double stems) implements Fact {
    }

    record Flowers(Fact density) implements Fact {
    }

    record HeadsDrawnTo(@In(Measure.METRES) double distance) implements Fact {
    }

    record SomeHeadsDrawnTo(@In(Measure.SHARE) double share, @In(Measure.METRES) double distance) implements Fact {
    }

    /** Where a line in the picture begins. */
    record LeadsInFrom(Fact place) implements Fact {
    }

    /** A part of the frame that something is to be kept out of. */
    record StruckOut(Fact place) implements Fact {
    }

    /** A usual tree above a flower. */
    record TreesLike(String tree, String flower) implements Fact {
    }

    /** Of a stand that is not in full flower yet, or no longer. */
    record StillInBud(@In(Measure.SHARE) double share) implements Fact {
    }

    /** By the flowers that are open on the day. */
    record OpenCover(@In(Measure.SHARE) double cover) implements Fact {
    }

    record AlreadyFaded(@In(Measure.SHARE) double share) implements Fact {
    }

    record FocusAt(@In(Measure.METRES) double distance) implements Fact {
    }

    /** Sentences in their order. */
    static Fact text(List<Fact> sentences) {
        return sentences.stream().reduce(Next::new).orElseThrow();
    }
}
