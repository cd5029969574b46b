import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import linewalk.drawing.Affine;
import linewalk.drawing.Point;
import linewalk.importer.ocr.LetterReader;
import linewalk.importer.page.Glyph;
import linewalk.importer.scan.PageRaster;
import linewalk.importer.scan.ScanReader;
import linewalk.samples.scan.ScanSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/**
 * Measures which letters of scans are taken for which. Prints words as drawings have them in the standard fonts, scans them
 * in two resolutions and tones, reads them and lays every letter that was read beside the one that was printed. Words
 * read with too many or too few letters are counted and left out.
 *
 * <p>Arguments: a folder to work in, and the file to write: read letter, printed letter, how often.
 */
final class LetterConfusions {

    private static final List<FontName> FONTS = List.of(
            FontName.HELVETICA,
            FontName.HELVETICA_BOLD,
            FontName.HELVETICA_OBLIQUE,
            FontName.TIMES_ROMAN,
            FontName.TIMES_BOLD,
            FontName.COURIER,
            FontName.COURIER_BOLD);

    private static final double PT_PER_MM = 72 / 25.4;
    private static final double CAPITALS = 0.7;

    /** Heights of capitals of ISO 3098, and one below, as of reduced prints; in mm. */
    private static final double[] HEIGHTS = {1.8, 2.5, 3.5};

    private static final int COLUMNS = 12;
    private static final int ROWS = 28;
    private static final int LEFT = 60;
    private static final int TOP = 60;
    private static final int WIDE = 90;
    private static final int HIGH = 25;
    private static final int WIDTH = 1190;
    private static final int HEIGHT = 842;

    /** A stands for any letter that zones and designations use, N for any figure; the rest stands for itself. */
    private static final List<String> MAKES = List.of(
            "N/AN", "NN/AN", "A-NN", "AAN", "NAN", "NANN", "A-NNN", "NNxN", "N-AN", "AN", "NN.N", "ANA", "NNN", "A-NN/AN");

    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final Random chance = new Random(1);
    private final List<String> words = new ArrayList<>();
    private final Map<String, Map<String, Integer>> counts = new TreeMap<>();
    private int left;

    public static void main(String... args) throws Exception {
        LetterConfusions c = new LetterConfusions();
        Path folder = Path.of(args[0]);
        c.print(folder.resolve("words.pdf"), folder.resolve("truth.json"));
        for (int dpi : new int[] {200, 300}) {
            for (boolean bitonal : new boolean[] {true, false}) {
                Path scans = folder.resolve(dpi + (bitonal ? "-bitonal" : "-grey"));
                ScanSet.write(folder.resolve("words.pdf"), folder.resolve("truth.json"), scans, dpi, bitonal);
                c.read(scans.resolve("scan.pdf").toFile(), scans.resolve("truth.json").toFile());
            }
        }
        c.write(Path.of(args[1]));
    }

    private String word() {
        StringBuilder out = new StringBuilder();
        for (char m : MAKES.get(chance.nextInt(MAKES.size())).toCharArray()) {
            out.append(
                    m == 'A'
                            ? LETTERS.charAt(chance.nextInt(LETTERS.length()))
                            : m == 'N' ? (char) ('0' + chance.nextInt(10)) : m);
        }
        return out.toString();
    }

    private void print(Path pdf, Path truth) throws IOException {
        List<Map<String, Object>> sheets = new ArrayList<>();
        try (PDDocument document = new PDDocument()) {
            for (FontName name : FONTS) {
                PDPage page = new PDPage(new PDRectangle(WIDTH, HEIGHT));
                document.addPage(page);
                sheets.add(Map.of("page", sheets.size() + 1));
                PDFont font = new PDType1Font(name);
                try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                    rule(out);
                    for (int i = 0; i < COLUMNS * ROWS; i++) {
                        words.add(word());
                        double size = HEIGHTS[i % HEIGHTS.length] * PT_PER_MM / CAPITALS;
                        out.beginText();
                        out.setFont(font, (float) size);
                        out.newLineAtOffset(LEFT + WIDE * (i % COLUMNS), HEIGHT - TOP - HIGH * (i / COLUMNS));
                        out.showText(words.get(words.size() - 1));
                        out.endText();
                    }
                }
            }
            document.save(pdf.toFile());
        }
        Files.writeString(truth, new ObjectMapper().writeValueAsString(Map.of("sheets", sheets)));
    }

    /** A frame and lines between the columns, in the pens of ISO 128: letters are told from lines by their pens. */
    private static void rule(PDPageContentStream out) throws IOException {
        out.setLineWidth((float) (0.5 * PT_PER_MM));
        out.addRect(30, 30, WIDTH - 60, HEIGHT - 60);
        out.stroke();
        out.setLineWidth((float) (0.25 * PT_PER_MM));
        for (int c = 1; c < COLUMNS; c++) {
            out.moveTo(LEFT + WIDE * c - 15, 50);
            out.lineTo(LEFT + WIDE * c - 15, HEIGHT - 40);
            out.stroke();
        }
    }

    private void read(File pdf, File truth) throws Exception {
        JsonNode sheets = new ObjectMapper().readTree(truth).get("sheets");
        try (PDDocument document = Loader.loadPDF(pdf);
                LetterReader reader = LetterReader.lazy()) {
            for (int p = 0; p < document.getNumberOfPages(); p++) {
                PDRectangle box = document.getPage(p).getMediaBox();
                double px = imageWidth(document.getPage(p)) / box.getWidth();
                PageRaster raster = PageRaster.of(document, p, px);
                ScanReader.Upturned page =
                        new ScanReader(raster.grey(), raster.pxPerPt(), reader, w -> false).read();
                JsonNode t = sheets.get(p).get("display_transform");
                double[] m = new double[6];
                Arrays.setAll(m, i -> t.get(i).asDouble());
                AffineTransform back = new AffineTransform(m[0], m[3], m[1], m[4], m[2], m[5]).createInverse();
                count(p, page, back);
            }
        }
    }

    private static int imageWidth(PDPage page) throws IOException {
        var names = page.getResources().getXObjectNames();
        return ((org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject)
                        page.getResources().getXObject(names.iterator().next()))
                .getWidth();
    }

    private void count(int page, ScanReader.Upturned scan, AffineTransform back) {
        Map<Integer, List<Glyph>> cells = new TreeMap<>();
        Affine out = scan.toDisplay();
        for (Glyph g : scan.marks().glyphs()) {
            Point s = out.apply(g.start());
            Point2D d = back.transform(new Point2D.Double(s.xPt(), s.yPt()), null);
            int column = (int) Math.floor((d.getX() - LEFT + 5) / WIDE);
            int row = (int) Math.round((d.getY() - TOP + 3) / HIGH);
            if (column >= 0 && column < COLUMNS && row >= 0 && row < ROWS && !g.text().isBlank()) {
                cells.computeIfAbsent(row * COLUMNS + column, k -> new ArrayList<>()).add(g);
            }
        }
        for (int i = 0; i < COLUMNS * ROWS; i++) {
            count(words.get(page * COLUMNS * ROWS + i), cells.getOrDefault(i, List.of()), back, out);
        }
    }

    private void count(String printed, List<Glyph> read, AffineTransform back, Affine out) {
        List<Glyph> row = new ArrayList<>(read);
        row.sort(Comparator.comparingDouble(g -> along(g, back, out)));
        String said = row.stream().map(Glyph::text).collect(Collectors.joining());
        if (said.equals(printed)) {
            said.chars().mapToObj(Character::toString).forEach(c -> count(c, c));
            return;
        }
        if (row.size() != printed.length() || row.stream().anyMatch(g -> g.text().length() != 1)) {
            left++;
            return;
        }
        for (int i = 0; i < row.size(); i++) {
            count(row.get(i).text(), printed.substring(i, i + 1));
        }
    }

    private void count(String read, String printed) {
        counts.computeIfAbsent(read, k -> new TreeMap<>()).merge(printed, 1, Integer::sum);
    }

    private static double along(Glyph g, AffineTransform back, Affine out) {
        Point s = out.apply(g.start());
        return back.transform(new Point2D.Double(s.xPt(), s.yPt()), null).getX();
    }

    private void write(Path file) throws IOException {
        int total = counts.values().stream().flatMap(m -> m.values().stream()).mapToInt(Integer::intValue).sum();
        long wrong = counts.entrySet().stream()
                .flatMap(e -> e.getValue().entrySet().stream().filter(f -> !f.getKey().equals(e.getKey())))
                .mapToInt(Map.Entry::getValue)
                .sum();
        PrintStream said = System.out;
        said.printf(Locale.ROOT, "%d letters, %d read as others; %d words of %d left out%n", total, wrong, left, 4 * words.size());
        String lines = counts.entrySet().stream()
                .flatMap(e -> e.getValue().entrySet().stream()
                        .map(f -> e.getKey() + "\t" + f.getKey() + "\t" + f.getValue()))
                .collect(Collectors.joining("\n", "read\tprinted\tcount\n", "\n"));
        Files.writeString(file, lines);
    }
}
