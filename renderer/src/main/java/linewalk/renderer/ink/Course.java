package linewalk.renderer.ink;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;

/**
 * Where dashes and marks stand along a line. Every straight part is filled evenly, so that corners stay whole.
 *
 * @param free where marks have room
 */
record Course(List<Point2D> points, Predicate<Point2D> free) {

    Course {
        points = List.copyOf(points);
    }

    /** A point of the line and the direction in which the line runs there, of length 1. */
    record Place(double xPt, double yPt, double ux, double uy) {

        /** This far along the line, and this far to its right as it is seen on the page. */
        Point2D at(double alongPt, double asidePt) {
            return new Point2D.Double(xPt + alongPt * ux - asidePt * uy, yPt + alongPt * uy + asidePt * ux);
        }
    }

    /**
     * Evenly spaced places about {@code everyPt} apart, clear of corners, where they are free; at least one on the longest
     * part, if it has room: a mark on a crossing would be a joint.
     */
    List<Place> places(double everyPt) {
        List<Place> places = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            double lengthPt = length(i);
            int n = (int) Math.floor(lengthPt / everyPt);
            for (int k = 0; k < n; k++) {
                places.add(place(i, lengthPt * (k + 0.5) / n));
            }
        }
        places.removeIf(p -> !free.test(p.at(0, 0)));
        int longest = longest();
        if (places.isEmpty() && length(longest) > 0) {
            DoubleStream.of(0.5, 0.25, 0.75, 0.15, 0.85)
                    .mapToObj(share -> place(longest, share * length(longest)))
                    .filter(p -> free.test(p.at(0, 0)))
                    .findFirst()
                    .ifPresent(places::add);
        }
        return places;
    }

    /** Dashes of this length with gaps no shorter than asked; a dash stands at both ends and bends with each corner. */
    List<List<Point2D>> dashes(double onPt, double offPt) {
        List<List<Point2D>> dashes = new ArrayList<>();
        List<Point2D> open = new ArrayList<>(List.of(points.get(0)));
        for (int i = 1; i < points.size(); i++) {
            double lengthPt = length(i);
            int gaps = gaps(lengthPt, onPt, offPt);
            double dashPt = Math.min(onPt, (lengthPt - gaps * offPt) / (gaps + 1));
            double periodPt = gaps == 0 ? 0 : (lengthPt - dashPt) / gaps;
            for (int k = 0; k < gaps; k++) {
                open.add(place(i, k * periodPt + dashPt).at(0, 0));
                dashes.add(open);
                open = new ArrayList<>(List.of(place(i, (k + 1) * periodPt).at(0, 0)));
            }
            open.add(points.get(i));
        }
        dashes.add(open);
        return dashes;
    }

    /** A part too short for two whole dashes still shows one gap, unless it is hardly longer than the gap itself. */
    private static int gaps(double lengthPt, double onPt, double offPt) {
        int whole = (int) Math.floor((lengthPt - onPt) / (onPt + offPt));
        return whole > 0 ? whole : lengthPt > 2 * offPt ? 1 : 0;
    }

    /** The line bent to and fro, a whole number of times on each straight part, straight at its ends. */
    List<Point2D> zigzag(double periodPt, double swingPt) {
        List<Point2D> bent = new ArrayList<>(List.of(points.get(0)));
        for (int i = 1; i < points.size(); i++) {
            double lengthPt = length(i);
            int n = (int) Math.floor(lengthPt / periodPt);
            for (int k = 0; k < 2 * n; k++) {
                bent.add(place(i, lengthPt * (k + 0.5) / (2 * n)).at(0, k % 2 == 0 ? swingPt : -swingPt));
            }
            bent.add(points.get(i));
        }
        return bent;
    }

    private int longest() {
        int best = 1;
        for (int i = 2; i < points.size(); i++) {
            best = length(i) > length(best) ? i : best;
        }
        return best;
    }

    private double length(int i) {
        return points.get(i).distance(points.get(i - 1));
    }

    private Place place(int i, double alongPt) {
        Point2D p = points.get(i - 1);
        double lengthPt = length(i);
        double ux = lengthPt == 0 ? 0 : (points.get(i).getX() - p.getX()) / lengthPt;
        double uy = lengthPt == 0 ? 0 : (points.get(i).getY() - p.getY()) / lengthPt;
        return new Place(p.getX() + alongPt * ux, p.getY() + alongPt * uy, ux, uy);
    }
}
