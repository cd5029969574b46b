package linewalk.renderer.overlay;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Enclosure;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Flow;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Origin;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Port;
import linewalk.drawing.Reference;
import linewalk.drawing.Rule;
import linewalk.drawing.Sheet;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Small invented sheets, 600 by 400 pt, two fields by two, that tests put one thing on; and eyes for what comes out. */
final class OverlayBench {

    static final double WIDTH_PT = 600;
    static final double HEIGHT_PT = 400;
    static final Affine UPRIGHT = new Affine(1, 0, 0, 0, -1, HEIGHT_PT);

    final List<Sheet> sheets = new ArrayList<>();
    final List<Component> parts = new ArrayList<>();
    final List<Reference> references = new ArrayList<>();
    final List<Line> lines = new ArrayList<>();
    final List<Enclosure> enclosures = new ArrayList<>();
    final List<Finding> findings = new ArrayList<>();
    Path source = Path.of("missing.pdf");

    static PageKey page(int n) {
        return new PageKey("bench.pdf", n);
    }

    OverlayBench sheet(Affine toPage) {
        int n = sheets.size() + 1;
        ZoneGrid grid = new ZoneGrid(
                List.of(new ZoneGrid.Band("1", 20, 300), new ZoneGrid.Band("2", 300, 580)),
                List.of(new ZoneGrid.Band("A", 20, 200), new ZoneGrid.Band("B", 200, 380)),
                true);
        sheets.add(new Sheet("S" + n, page(n), WIDTH_PT, HEIGHT_PT, "TITLE " + n, "C", Origin.TEXT, grid, toPage));
        return this;
    }

    Component part(String tag, Kind kind, double xPt, double yPt, double confidence) {
        Point at = new Point(xPt, yPt);
        Port port = new Port(tag + ":P", "P", at.plus(0, -15));
        parts.add(new Component(
                tag,
                tag,
                page(1),
                at,
                Box.around(at).grow(15),
                kind,
                "210 bar",
                Origin.TEXT,
                confidence,
                List.of(port),
                List.of()));
        return parts.get(parts.size() - 1);
    }

    Reference reference(int sheet, String id, String target, List<String> mates, double mateConfidence) {
        Point at = new Point(500, 300);
        references.add(new Reference(
                id,
                page(sheet),
                at,
                Box.around(at).grow(12),
                Zone.parse("B2").orElseThrow(),
                target,
                List.of(new Target(target, Zone.parse("B2").orElseThrow())),
                "L-1",
                Flow.OUT,
                Origin.TEXT,
                1,
                mates,
                mateConfidence));
        return references.get(references.size() - 1);
    }

    Line line(double confidence, Point... course) {
        List<Point> run = List.of(course);
        List<End> ends = List.of(new End.Open(run.get(0)), new End.Open(run.get(run.size() - 1)));
        Line line = new Line("l" + lines.size(), page(1), LineKind.WORKING, null, null, confidence, ends, List.of(run));
        lines.add(line);
        return line;
    }

    void finding(Rule rule, int sheet, Point place, String message, String remedy) {
        findings.add(new Finding(rule, sheet == 0 ? null : page(sheet), place, List.of(), List.of(), message, remedy));
    }

    byte[] print() {
        DrawingSet set = new DrawingSet(sheets, references, parts, enclosures, lines, findings);
        OverlayJob job = new OverlayJob(set, sheets, s -> source, LocalDate.of(2026, 2, 3), "Bench press");
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            OverlayPrint.write(job, out, done -> {});
            Files.createDirectories(Path.of("target/prints"));
            Files.write(Path.of("target/prints/overlay.pdf"), out.toByteArray());
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** White space squeezed; pages count from 1. */
    static String text(byte[] pdf, int page) {
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(doc).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static BufferedImage picture(byte[] pdf, int page, float pixelsPerPt) {
        try (PDDocument doc = Loader.loadPDF(pdf)) {
            return new PDFRenderer(doc).renderImage(page - 1, pixelsPerPt);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Point> pixels(BufferedImage image, Predicate<Color> wanted) {
        List<Point> found = new ArrayList<>();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                if (wanted.test(new Color(image.getRGB(x, y)))) {
                    found.add(new Point(x + 0.5, y + 0.5));
                }
            }
        }
        return found;
    }

    static boolean near(Color a, Color b) {
        return Math.abs(a.getRed() - b.getRed())
                        + Math.abs(a.getGreen() - b.getGreen())
                        + Math.abs(a.getBlue() - b.getBlue())
                < 12;
    }
}
