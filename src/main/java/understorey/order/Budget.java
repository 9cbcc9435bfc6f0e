package understorey.order;

/** Limit of a search, in steps or in bytes: counted, not timed, so that it ends at the same plan on every machine. */
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
