package linewalk.importer.scan;

import java.util.Arrays;

/** Whether a letter stands in the middle of a circle drawn around it. */
final class Ring {

    private static final int RAYS = 32;

    /** A line that ends at the circle is met by few rays, a gap where it was faint too. */
    private static final int MEET = 26;

    /** Of the circle's radius; letters do not stand in the very middle. */
    private static final double ROUND = 0.12;

    /** In letters' heights. */
    private static final double WIDEST = 3;

    private Ring() {}

    static boolean around(Blob letter, Bits ink) {
        double[] far = new double[RAYS];
        for (int i = 0; i < RAYS; i++) {
            far[i] = ray(letter, ink, 2 * Math.PI * i / RAYS);
        }
        double[] sorted = far.clone();
        Arrays.sort(sorted);
        double usual = sorted[RAYS / 2];
        return usual < Double.MAX_VALUE
                && Arrays.stream(far)
                                .filter(d -> Math.abs(d - usual) < ROUND * usual)
                                .count()
                        >= MEET;
    }

    /** How far from the letter's middle the first ink outside its box is. */
    private static double ray(Blob letter, Bits ink, double angle) {
        double dx = Math.cos(angle);
        double dy = Math.sin(angle);
        double from = Math.hypot(letter.width(), letter.height()) / 2 + 1;
        for (double r = from; r < WIDEST * letter.longer(); r++) {
            int x = (int) Math.floor(letter.middleX() + r * dx);
            int y = (int) Math.floor(letter.middleY() + r * dy);
            if (ink.get(x, y)) {
                return r;
            }
        }
        return Double.MAX_VALUE;
    }
}
