package understorey.share;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.plan.Position;

/** Codes and grid references of the site were worked out apart from this code, by Krüger's series and the codes' own rules. */
class PositionTextTest {

    private static final PositionText AT = new PositionText(new Position(52.337, -3.548));

    private static String in(String text) {
        return AT.in(PlainText.forms(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        // decimal
        "52.337, -3.548", "52.337 -3.548", "52.337\u00a0-3.548", "52.337\u202f\u22123.548", "52.337\n-3.548", "52.337/-3.548",
        "52.337;3.548", "52.337,-3.548", "(52.3370° N, 3.5480° W)", "N52.337 W3.548", "52.337N 3.548W", "52.337n, 3.548w",
        "-3.548, 52.337", "X: -3.548 Y: 52.337", "52,337 N 3,548 W", "52,337; -3,548", "52,337,-3,548", "52.3, -3.5",
        "51.501, -0.142", "about 52.337 by -3.548", "52.337 up and 3.548 to the left", "**52.337**, *-3.548*", "**52**.337, **3**.548",
        "<b>52.337</b> <i>-3.548</i>", "52<!-- -->.337 3.548", "`52.337` | `-3.548`", "５２.３３７, -３.５４８", "٥٢.٣٣٧ ٣.٥٤٨",
        "52.337%2C-3.548", "52%2E337%2C%20-3%2E548", "52&#46;337&comma; -3&period;548", "52&period;337&nbsp;&minus;3&period;548",
        "\\u0035\\u0032.337, -3.548", "52\u200b.337, -3\u200d.548", "It lies at 52.337, as the crow flies.", "52·337 N, 3·548 W",
        "[52.337](x) [-3.548](y)", "52 337 N 3 548 W", "52337, -3548", "523370000 -35480000", "0.91345, -0.06192 rad", "58.1522 gon, 3.9422 gon",
        // with names of the parts
        "latitude 52.337", "Latitude: 52", "longitude is some 3.5", "Breitengrad 52,3", "Längengrad 3,5", "lat 52.3 lon -3.5", "lat. 52", "φ = 52.3",
        "latitud 52,337", "широта 52,337", "緯度 52.337", "52.3 degrees of latitude", "lng=3.548", "coordinates 52.337", "Koordinaten: 52 3",
        // degrees, minutes and seconds
        "52° 20.22′ N, 3° 32.88′ W", "52°20′13″N 3°32′53″W", "52º20'13\"N 3º32'53\"O", "52 deg 20 min", "52 degrees 20 minutes north",
        "52° 20'", "52 20 13, 3 32 53", "52:20:13 3:32:53", "52-20-13 N 3-32-53 W", "N 52 20.220 W 003 32.880", "5220.22N 00332.88W",
        "+522013-0033253/", "+52.337-003.548/", "52⁰20′ N", "52 1/3 N, 3 1/2 W", "52⅓ N 3½ W", "52 N, 3 W",
        "N 52 W 3", "52° N", "52.3°N", "52d20m13s 3d32m53s",
        "fifty-two point three three seven north", "fifty-two degrees twenty minutes", "fifty two point three, three point five",
        "52,3° Nord, 3,5° West", "52,337 Nord",
        // addresses
        "geo:52.337,-3.548", "[here](geo:52,-3)", "https://example.org/?q=52.337,-3.548", "https://example.org/@52.3,-3.5,15z",
        "https://example.org/?mlat=52.3&mlon=-3.5#map=15/52.337/-3.548", "example.org/?ll=52.337%2C-3.548", "?cp=52.3~-3.5",
        "https://example.org/15/16061/10773.png", "point=POINT(-3.548 52.337)", "///gentle.meadow.sparrow", "[x](https://example.org/?at=52.33)",
        // grids and codes
        "SN 945 721", "SN945721", "sn 94542 72161", "S N 94 72", "30U 462662 5798662", "462663 5798663", "462 663, 5 798 663", "E 462663 N 5798663",
        "30UVC6266298662", "30U VC 626 986", "UTM 30 4626", "294542, 272161", "grid reference 94 72", "easting 94542", "gcm3xr8mj", "GCM3XR", "gcm3x",
        "9C4R8FP2+QQ", "8FP2+QQ", "9C4R0000+", "9c4r8fp2qq", "IO82fi", "io82", "MKMH2720", "8928308280fffff", "T12N R3W", "SY18 6QE",
        // digits in other dress
        "٥٢٫٣٣٧١٩ ٣٫٥٤٨٢٣", "⁵²·³³⁷¹⁹ ⁻³·⁵⁴⁸²³", "⁵².³³⁷⁰⁹", "5\ufe0f\u20e32\ufe0f\u20e3.3\ufe0f\u20e33\ufe0f\u20e37\ufe0f\u20e3", "➄➁.➂➂➆",
        "52 . 33719 , -3 . 54823", "5 2 . 3 3 7 1 9", "52 dot 33719", "52 comma 33719", "52 point 3 3 7", "fifty-two dot three three seven",
        "52 (dot) 33719", "52.20.14, 3.32.54",
        // without the letters of the square; metres of a web map, by the spherical Mercator formulas
        "GR 945727", "map ref 945727", "OS 945 727", "sheet 136 945727", "Sheet 136, 945-727", "945727", "9454 7216", "94542 72161", "ref: 123456",
        "-394987 6861000", "94.5 km, 72.7 km in SN", "94.5 km east, 72.1 km north",
        // words, codes with blanks, postcodes
        "filled.count.soap", "Filled.count.soap.", "see filled.count.soap", "filled·count·soap", "9C4R 8FP2 + V5", "8fp2 + v5", "9C4R 8FP2+V5",
        "sy18 6qq", "Sy18 6qq", "k1a 0b1", "postcode 12345", "PLZ D-12345"})
    void findsWhatReadsAsAPosition(String text) {
        assertNotNull(in(text), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"f/8 at 1/60 s", "50-200 mm", "12 May 05:30", "ISO 100, 200", "2.5 m, 40 m", "bank 3", "grade II",
        "Short zoom 24-70 mm f/2.8", "90 mm f/2.8, 1:1", "EF 50 mm f/1.8", "RF 24-105 F4", "XT 3000", "SD 64 GB", "NP 1234 batteries",
        "Call 01632 960983 before you go", "+44 1632 960983", "2027-05-08, 05:00 to 09:30", "Sunrise 05:28, sunset 20:52",
        "8.5.2027", "12/05/2027", "One head, one drop", "Two of three pictures, twenty minutes each", "Nearest head about 40 cm away",
        "From 2.5 m to 40 m", "sharp 4 m to 40 m, 50 mm, facing ENE", "60° to the sun", "tilt 8° down", "Facing SW, 225°",
        "5600 K, or 6500 K in shade", "EV 12.5 on the floor", "24 Mpx, 36 × 24 mm", "f/4-6.3", "88 % chance, ±2 days",
        "1/250 s at f/5.6 and ISO 400", "0.025 s", "a 1.5 stop loss, 62 to 72 mm ring", "The first hour is worth all the rest",
        "6 °C at 05:00, 11 °C at 09:00", "wind 12 km/h, gusts 24 km/h", "Stay 20 min", "10 stops, 6 stops, 3 stops", "16:9 or 3:2",
        "Day 1 of 3", "2 h 30 min", "450 g + 1.35 kg", "100 % crop", "Papery flowers on red sand", "9.8 x 7.3 mm, 6.9 mm f/1.8",
        "ND 64 and CPL", "Green leaves and dress gloves", "bluebells", "A3+ print", "CR2032", "B+W 72 mm", "west of the stream, north light",
        "step 2.25 m back", "4K at 25 fps", "10.5281/zenodo.123",
        "plan.final.yaml", "bluebells.final.jpg", "e.g. ferns, i.e. green", "version 2.3.34", "1.2.0", "05.30.00",
        "05.30.00 to 09.15.00", "12.05.2027",
        "8.5.27", "Wait...then...shoot", "from 12. 5 pictures", "01632 960 983", "(01632) 960983", "400 ISO", "ISO 100 200 400", "2 + 3 frames",
        "5600 + 250", "the 2nd of 3", "x5 2nd edition", "f4 2nd try", "map 1:25 000", "a map of 2027", "OS map, 1:50 000", "2 km, then 3 km",
        "0.5 km and 1.5 km", "sheet 2", "ref 12", "1 2 3 4", "images.example.org", "zip 2.5 m", "100 000 steps", "frames 1234 to 1260",
        "2 x 3 m", "frame 250 000", "20270508"})
    void letsEverydayFiguresPass(String text) {
        assertNull(in(text), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"52.9 mm, 4.1 m", "52 mm 20 s, 3 m 32 s"})
    void prefersToAskOnceTooOftenNearTheSite(String text) {
        assertNotNull(in(text), text);
    }
}
