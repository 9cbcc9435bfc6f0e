package understorey.exposure.motion;

/**
 * What a picture would be taken at in a lull, where that is slower, at a lower ISO or stopped down further than in the wind
 * as forecast. All as marked.
 *
 * @param share of the time in which the wind is as low
 */
public record Lull(double fNumber, double shutterS, int iso, double share) {
}
