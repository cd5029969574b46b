package linewalk.samples;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * A path as the file has it. {@code points} are the ends of its straight pieces; {@code straight}, {@code curved} and
 * {@code rectangles} count its pieces.
 */
record PaintedPath(
        boolean filled, double width, boolean dashed, int straight, int curved, int rectangles, List<double[]> points) {
    static List<PaintedPath> of(Demo demo) throws IOException {
        List<PaintedPath> out = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(demo.pdf().toFile())) {
            for (PDPage page : document.getPages()) {
                new Reader(out).read(new PDFStreamParser(page).parse());
            }
        }
        return out;
    }

    private static final class Reader {
        private final List<PaintedPath> out;
        private final List<COSBase> operands = new ArrayList<>();
        private List<double[]> points = new ArrayList<>();
        private double width;
        private boolean dashed;
        private int straight;
        private int curved;
        private int rectangles;

        Reader(List<PaintedPath> out) {
            this.out = out;
        }

        void read(List<Object> tokens) {
            for (Object token : tokens) {
                if (token instanceof Operator operator) {
                    apply(operator.getName());
                    operands.clear();
                } else {
                    operands.add((COSBase) token);
                }
            }
        }

        private void apply(String name) {
            switch (name) {
                case "w" -> width = number(0);
                case "d" -> dashed = ((COSArray) operands.get(0)).size() > 0;
                case "m" -> points.add(new double[] {number(0), number(1)});
                case "l" -> {
                    straight++;
                    points.add(new double[] {number(0), number(1)});
                }
                case "c" -> curved++;
                case "re" -> rectangles++;
                case "s" -> {
                    straight++;
                    painted(false);
                }
                case "S" -> painted(false);
                case "f" -> painted(true);
                default -> {}
            }
        }

        private double number(int i) {
            return ((COSNumber) operands.get(i)).floatValue();
        }

        private void painted(boolean filled) {
            out.add(new PaintedPath(filled, width, dashed, straight, curved, rectangles, points));
            points = new ArrayList<>();
            straight = 0;
            curved = 0;
            rectangles = 0;
        }
    }
}
