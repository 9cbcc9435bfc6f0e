package understorey.share;

import java.util.Arrays;
import java.util.Set;

/** Words for a kind of landscape, path or thing in a wood: alone they do not identify a place. */
final class Landscape {

    private static final Set<String> KINDS = Set.copyOf(Arrays.asList(("wood woods woodland woodlands forest forests copse coppice spinney "
            + "thicket grove holt hurst shaw weald wald walde wäldchen holz hain forst skov skog skogen bois foret bosco bosque "
            + "selva floresta bos las hill hills hillside mountain mountains mount ridge bank banks slope cliff crag edge down "
            + "downs moor moorland heath common meadow meadows field fields pasture park reserve nature garden gardens valley "
            + "vale dale glen gill dingle dell coombe combe hollow gully ravine gorge canyon creek stream brook beck burn river "
            + "riverside lake pond pool tarn water waterfall falls spring springs well marsh swamp fen island coast shore beach "
            + "sand stone stones rock rocks boulder wall fence hedge stile gate gates gateway bridge footbridge bench shelter hide "
            + "barn house cottage farm church chapel mill tower castle quarry mine path paths footpath track trail road lane ride "
            + "drive avenue step steps stump trunk tree trees oak oaks ash beech beeches birch elm lime maple pine pines spruce fir larch "
            + "yew holly hazel willow alder rowan cherry gum fern ferns moss bracken ivy flower flowers bluebell bluebells ramsons "
            + "anemone anemones orchid orchids glade clearing corner bend junction crossing entrance exit parking place site spot "
            + "view viewpoint point rise north south east west northern southern eastern western upper lower middle great little "
            + "small large long short high near far first second third last left right back front side white black green brown "
            + "grey gray blue yellow golden silver dark light sunny shady fallen broken hollow public private national local "
            + "with from this that then when where please monday tuesday wednesday thursday friday saturday sunday january "
            + "february march april june july august september october november december summer autumn winter").split(" ")));

    private Landscape() {
    }

    static boolean isKind(String word) {
        return KINDS.contains(word) || word.endsWith("s") && KINDS.contains(word.substring(0, word.length() - 1));
    }
}
