package linewalk.samples.sheet;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.style.DraftingStyle;

/** Moves a sheet's drawing on its paper so that no reference stands on a zone border. */
final class Placer {
    private static final double CONTENT_WIDTH = 69.5;
    private static final double CONTENT_HEIGHT = 45;
    /** How far a drawing may be moved at least; farther on paper with room to spare. */
    private static final double REACH = 2.6;

    private static final double MARGIN = 1.5;
    private static final double ENOUGH = 0.35;

    private final DraftingStyle style;
    private final ReferenceRoom room;

    Placer(DraftingStyle style, Fonts fonts) {
        this.style = style;
        this.room = new ReferenceRoom(style, fonts);
    }

    Placement place(SheetPlan sheet) {
        double sideMm = style.title() == DraftingStyle.TitleForm.SIDE ? TitlePainter.SIDE_WIDTH : 0;
        double frameWidth = (style.grid().rightMm() - style.grid().leftMm() - sideMm) / style.unitMm();
        double frameHeight = (style.grid().bottomMm() - style.grid().topMm()) / style.unitMm();
        List<double[]> spansX = new ArrayList<>();
        List<double[]> spansY = new ArrayList<>();
        sheet.references().forEach(reference -> {
            Box box = room.room(reference);
            spansX.add(new double[] {box.x0Pt(), box.x1Pt()});
            spansY.add(new double[] {box.y0Pt(), box.y1Pt()});
        });
        double x = shift(
                (frameWidth - CONTENT_WIDTH) / 2,
                spansX,
                borders(style.grid().columnsMm(), style.grid().leftMm()));
        double y = shift(
                Math.max(1.2, (frameHeight - CONTENT_HEIGHT) / 2),
                spansY,
                borders(style.grid().rowsMm(), style.grid().topMm()));
        return new Placement(style, x, y);
    }

    private List<Double> borders(List<Double> mm, double originMm) {
        return mm.subList(1, mm.size() - 1).stream()
                .map(at -> (at - originMm) / style.unitMm())
                .toList();
    }

    /** The nearest shift that keeps enough room to all borders, or else the best. */
    private static double shift(double usual, List<double[]> spans, List<Double> borders) {
        double best = usual;
        double bestRoom = -Double.MAX_VALUE;
        double reach = Math.max(REACH, usual - MARGIN);
        for (int i = 0; i <= 2 * reach / 0.05; i++) {
            double step = 0.05 * ((i + 1) / 2) * (i % 2 == 0 ? 1 : -1);
            double least = Math.min(ENOUGH, least(usual + step, spans, borders));
            if (least > bestRoom + 1e-9) {
                bestRoom = least;
                best = usual + step;
            }
        }
        return best;
    }

    private static double least(double shift, List<double[]> spans, List<Double> borders) {
        double least = Double.MAX_VALUE;
        for (double[] span : spans) {
            for (double border : borders) {
                double after = span[0] + shift - border;
                double before = border - span[1] - shift;
                least = Math.min(least, Math.max(after, before));
            }
        }
        return least;
    }
}
