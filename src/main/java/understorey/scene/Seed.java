package understorey.scene;

/** What looks like chance in a drawing, and is the same each time: shares that a seed, an index and a purpose give. */
public record Seed(int seed) {

    /** A share from 0 to 1, evenly spread (multiply and fold, 32 bits). */
    public double share(int index, int purpose) {
        int mixed = (seed ^ index * 0x9E3779B1 ^ purpose * 0x85EBCA6B) * 0xC2B2AE35;
        mixed = (mixed ^ mixed >>> 15) * 0x27D4EB2F;
        return ((mixed ^ mixed >>> 13) & 0xFFFF) / 65535.0;
    }
}
