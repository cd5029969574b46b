package linewalk.importer.valve;

/**
 * Where a passage may leave a square, the same in every square of a row.
 *
 * @param alongPt from the square's left side
 * @param upper on the upper long side
 */
record Place(double alongPt, boolean upper) {

    boolean near(Place o, double withinPt) {
        return upper == o.upper && Math.abs(alongPt - o.alongPt) <= withinPt;
    }
}
