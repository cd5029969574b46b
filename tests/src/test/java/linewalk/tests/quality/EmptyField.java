package linewalk.tests.quality;

import java.awt.geom.Rectangle2D;

/** How much of the picture's field is blank paper, in squares of 10 mm by 10 mm. */
final class EmptyField {

    private static final double SQUARE_PT = 10 * 72 / 25.4;

    private final PrintPage page;
    private int squares;
    private int empty;

    private EmptyField(PrintPage page) {
        this.page = page;
    }

    /** Empty squares and all squares of the fields marked on a page. */
    static int[] of(PrintPage page) {
        EmptyField f = new EmptyField(page);
        page.fields().forEach(field -> f.count(field.box()));
        return new int[] {f.empty, f.squares};
    }

    private void count(Rectangle2D field) {
        for (double y = field.getMinY(); y + SQUARE_PT <= field.getMaxY() + 1e-6; y += SQUARE_PT) {
            for (double x = field.getMinX(); x + SQUARE_PT <= field.getMaxX() + 1e-6; x += SQUARE_PT) {
                Rectangle2D square = new Rectangle2D.Double(x, y, SQUARE_PT, SQUARE_PT);
                squares++;
                empty += isEmpty(square) ? 1 : 0;
            }
        }
    }

    private boolean isEmpty(Rectangle2D square) {
        return page.texts().stream().noneMatch(t -> t.ink().intersects(square))
                && page.symbols().stream().noneMatch(s -> s.box().intersects(square))
                && page.paints().stream()
                        .filter(p -> !p.isLight() && p.isNear(square))
                        // a tint of the ground makes no square full
                        .filter(p -> !p.contains(square))
                        .allMatch(p -> p.within(square).isEmpty());
    }
}
