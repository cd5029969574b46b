package linewalk.renderer.overlay;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;
import java.util.List;
import linewalk.drawing.Severity;
import linewalk.renderer.sheet.Ink;

/** Colours and strokes that only the overlay has. */
final class Tint {

    /**
     * Distinct for every common kind of colour-blindness (six of Okabe and Ito's colours and an indigo); the violet of
     * doubt is kept out.
     */
    static final List<Color> LINES = List.of(
            new Color(0x00, 0x72, 0xB2),
            new Color(0xE6, 0x9F, 0x00),
            new Color(0x00, 0x9E, 0x73),
            new Color(0xD5, 0x5E, 0x00),
            new Color(0x56, 0xB4, 0xE9),
            new Color(0x33, 0x22, 0x88),
            new Color(0xCC, 0x79, 0xA7));

    static final Color VEIL = new Color(0xFF, 0xFF, 0xFF, 0x73);
    static final Color PAPER = new Color(0xFF, 0xFF, 0xFF, 0xD8);
    static final Color GRID = new Color(0x40, 0x60, 0x80, 0x50);
    static final Color GRID_LABEL = new Color(0x40, 0x60, 0x80);
    static final Color PART = new Color(0x20, 0x20, 0x20);
    static final Color REFERENCE = Ink.PATH;
    static final Color PASSAGE = new Color(0x00, 0x6B, 0x4F);
    static final Color ENCLOSURE = new Color(0x70, 0x4A, 0x20);
    private static final Color WARNING = new Color(0xFF, 0xD9, 0x66);

    private Tint() {}

    static Color see(Color color, int alpha) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
    }

    /** Under the number of a finding; lightness differs too. */
    static Color of(Severity severity) {
        return switch (severity) {
            case ERROR -> Ink.DOUBT;
            case WARNING -> WARNING;
            case NOTE -> Color.WHITE;
        };
    }

    static Stroke chain(double unitPt) {
        return new BasicStroke(
                (float) (1.6 * unitPt),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                new float[] {(float) (12 * unitPt), (float) (3 * unitPt), (float) (2 * unitPt), (float) (3 * unitPt)},
                0);
    }
}
