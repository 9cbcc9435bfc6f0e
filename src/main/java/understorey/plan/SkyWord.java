package understorey.plan;

/**
 * The sky in one word, for a cloud cover in okta (WMO terms): clear 0-2, scattered 3-4, broken 5-7, overcast 8. Each
 * word means the middle of its range.
 */
public enum SkyWord {
    CLEAR(1), SCATTERED(3.5), BROKEN(6), OVERCAST(8);

    private final double okta;

    SkyWord(double okta) {
        this.okta = okta;
    }

    public double okta() {
        return okta;
    }
}
