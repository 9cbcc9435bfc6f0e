package understorey.order;

/** What a search may spend, in steps or in bytes: counted, not timed, so that it ends at the same plan on every machine. */
final class Budget {

    private long left;

    Budget(long most) {
        this.left = most;
    }

    void spend(long some) {
        left -= some;
    }

    boolean spent() {
        return left <= 0;
    }
}
