package linewalk.importer.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import linewalk.drawing.Affine;
import linewalk.drawing.Point;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import linewalk.importer.ocr.LetterReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** However the page lay on the glass, it is read upright, and what was read is told where it lies. */
class PageTurnTest {

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void lettersTellHowThePageLies(int quarters) {
        BufferedImage drawn = new Sketch(0.8)
                .text("PUMP ROOM 3/B4", 300, 300, 50)
                .text("RETURN LINE 12", 300, 500, 50)
                .text("SHEET 7", 900, 800, 50)
                .image();
        boolean lying = quarters % 2 == 0;
        int w = lying ? drawn.getWidth() : drawn.getHeight();
        int h = lying ? drawn.getHeight() : drawn.getWidth();
        BufferedImage turned = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
        AffineTransform t = new AffineTransform();
        t.translate(w / 2.0, h / 2.0);
        t.quadrantRotate(quarters);
        t.translate(-drawn.getWidth() / 2.0, -drawn.getHeight() / 2.0);
        Graphics2D g = turned.createGraphics();
        g.drawImage(drawn, t, null);
        g.dispose();

        try (LetterReader reader = LetterReader.lazy()) {
            ScanReader.Upturned read = Sketch.read(Sketch.grey(turned), reader);
            List<Label> labels = LabelBuilder.labels(read.marks().glyphs());
            assertThat(labels.stream().map(Label::text)).contains("PUMP ROOM 3/B4", "RETURN LINE 12", "SHEET 7");
            Label sheet = labels.stream()
                    .filter(l -> l.text().equals("SHEET 7"))
                    .findFirst()
                    .orElseThrow();
            Point expected = at(t, 1000, 783);
            Affine shown = read.toDisplay();
            assertThat(shown.apply(sheet.center()).distancePt(expected)).isLessThan(8);
        }
    }

    private static Point at(AffineTransform t, double x, double y) {
        AffineTransform skew = AffineTransform.getRotateInstance(Math.toRadians(0.8), 700, 500);
        double[] p = {x, y};
        skew.transform(p, 0, p, 0, 1);
        t.transform(p, 0, p, 0, 1);
        return new Point(p[0] / Sketch.PX_PER_PT, p[1] / Sketch.PX_PER_PT);
    }
}
