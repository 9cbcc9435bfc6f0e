package understorey.scene.sketch;

/** A place or a direction in a head of flowers: to the right, up, and towards the camera along the level. */
record Vector(double x, double y, double z) {

    Vector plus(double times, Vector other) {
        return new Vector(x + times * other.x, y + times * other.y, z + times * other.z);
    }

    Vector times(double times) {
        return new Vector(times * x, times * y, times * z);
    }

    double dot(Vector other) {
        return x * other.x + y * other.y + z * other.z;
    }

    Vector unit() {
        return times(1 / Math.sqrt(dot(this)));
    }

    Vector cross(Vector other) {
        return new Vector(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** Of length 1, at a turn from the camera's right towards the camera, and an angle above the level; radians. */
    static Vector towards(double turn, double pitch) {
        return new Vector(Math.cos(turn) * Math.cos(pitch), Math.sin(pitch), Math.sin(turn) * Math.cos(pitch));
    }
}
