package linewalk.renderer;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Point;
import linewalk.drawing.Sheet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Where letters stand on an original, so that ours stay off them and a cutting is not made too small to read. */
final class SourceLetters extends PDFTextStripper {

    /** Capital height over type size of common typefaces. */
    private static final double CAP_SHARE = 0.7;

    /** One letter as displayed. */
    record Letter(String text, Box box, double capHeightPt) {}

    private final AffineTransform toDisplayed;
    private final PDRectangle crop;
    private final List<Letter> found = new ArrayList<>();

    private SourceLetters(AffineTransform toDisplayed, PDRectangle crop) {
        this.toDisplayed = toDisplayed;
        this.crop = crop;
    }

    static List<Letter> read(PDDocument doc, Sheet sheet) {
        try {
            PDRectangle crop = doc.getPage(sheet.page().page() - 1).getCropBox();
            SourceLetters letters = new SourceLetters(transform(sheet.toPage()).createInverse(), crop);
            letters.setStartPage(sheet.page().page());
            letters.setEndPage(sheet.page().page());
            letters.getText(doc);
            return letters.found;
        } catch (IOException | NoninvertibleTransformException e) {
            return List.of();
        }
    }

    static AffineTransform transform(Affine a) {
        return new AffineTransform(a.a(), a.d(), a.b(), a.e(), a.c(), a.f());
    }

    @Override
    protected void processTextPosition(TextPosition text) {
        if (text.getUnicode() == null || text.getUnicode().isBlank()) {
            return;
        }
        AffineTransform m = text.getTextMatrix().createAffineTransform();
        // text positions count from the crop box, the sheet's affine from the page's own origin
        AffineTransform user = AffineTransform.getTranslateInstance(crop.getLowerLeftX(), crop.getLowerLeftY());
        user.concatenate(m);
        AffineTransform shown = new AffineTransform(toDisplayed);
        shown.concatenate(user);
        double unit = Math.hypot(m.getScaleX(), m.getShearY());
        double width = unit == 0 ? 0 : text.getWidthDirAdj() / unit;
        Point2D a = shown.transform(new Point2D.Double(0, -0.2), null);
        Point2D b = shown.transform(new Point2D.Double(width, CAP_SHARE), null);
        Box box = Box.around(List.of(new Point(a.getX(), a.getY()), new Point(b.getX(), b.getY())));
        found.add(new Letter(text.getUnicode(), box, CAP_SHARE * Math.hypot(shown.getShearX(), shown.getScaleY())));
    }

    /** The box of a word that stands within reach of a part, written letter by letter; the nearest of several. */
    static Optional<Box> word(String word, List<Letter> letters, Box near, double reachPt) {
        Box best = null;
        for (int i = 0; i < letters.size(); i++) {
            if (near.distancePt(letters.get(i).box()) > reachPt) {
                continue;
            }
            Box box = wordAt(word, letters, i);
            if (box != null && (best == null || near.distancePt(box) < near.distancePt(best))) {
                best = box;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Box wordAt(String word, List<Letter> letters, int from) {
        StringBuilder text = new StringBuilder();
        Box box = letters.get(from).box();
        for (int i = from; i < letters.size() && text.length() < word.length(); i++) {
            if (letters.get(i).box().distancePt(box) > letters.get(i).capHeightPt()) {
                return null;
            }
            text.append(letters.get(i).text());
            box = box.union(letters.get(i).box());
        }
        return text.toString().equals(word) ? box : null;
    }
}
