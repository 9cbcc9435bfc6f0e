package understorey.yaml.finding;

/**
 * A place in a file.
 *
 * @param line   from 1
 * @param column from 1, in code points
 * @param length in code points, on that line alone; at least 1
 */
public record Pos(int line, int column, int length) {

    /** The file as a whole. */
    public static final Pos FILE = new Pos(0, 0, 0);

    public Pos {
        if (line > 0 && length < 1) {
            length = 1;
        }
    }
}
