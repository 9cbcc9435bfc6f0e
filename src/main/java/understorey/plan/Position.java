package understorey.plan;

/**
 * A place on the Earth, WGS 84.
 *
 * @param latitude  degrees, north positive, −90 to 90
 * @param longitude degrees, east positive, −180 to 180
 */
public record Position(double latitude, double longitude) {

    public Position {
        if (!(Math.abs(latitude) <= 90) || !(Math.abs(longitude) <= 180)) {
            throw new IllegalArgumentException("no such place: " + latitude + ", " + longitude);
        }
    }
}
