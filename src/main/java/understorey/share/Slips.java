package understorey.share;

/** Slips of the pen between two words: letters left out, added, changed or swapped with the next. */
final class Slips {

    private Slips() {
    }

    /** Optimal string alignment distance. */
    static int between(String one, String other) {
        int[][] slips = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                slips[i][j] = i == 0 || j == 0 ? i + j : step(slips, one, other, i, j);
            }
        }
        return slips[one.length()][other.length()];
    }

    private static int step(int[][] slips, String one, String other, int i, int j) {
        boolean same = one.charAt(i - 1) == other.charAt(j - 1);
        int least = Math.min(slips[i - 1][j - 1] + (same ? 0 : 1), Math.min(slips[i - 1][j], slips[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
        return swapped ? Math.min(least, slips[i - 2][j - 2] + 1) : least;
    }
}
