package linewalk.renderer.sheet;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDFormContentStream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;

/** A page to cut from, 300 by 200 points of user space: a frame, a diagonal, a word, a red field in the lower left. */
final class OriginalSheet {

    final PDDocument document = new PDDocument();

    /** @param hiddenPt so much of the page on the left and below is cropped away */
    OriginalSheet(int rotation, float hiddenPt) throws IOException {
        PDPage page = new PDPage(new PDRectangle(300, 200));
        page.setCropBox(new PDRectangle(hiddenPt, hiddenPt, 300 - hiddenPt, 200 - hiddenPt));
        page.setRotation(rotation);
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            out.addRect(40, 40, 220, 120);
            out.moveTo(40, 40);
            out.lineTo(260, 160);
            out.stroke();
            out.setNonStrokingColor(Color.RED);
            out.addRect(50, 60, 30, 20);
            out.fill();
            out.setNonStrokingColor(Color.BLACK);
            out.beginText();
            out.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 18);
            out.newLineAtOffset(150, 60);
            out.showText("0P1");
            out.endText();
        }
    }

    /** With a scan in its upper left part. */
    OriginalSheet withScan() throws IOException {
        BufferedImage scan = new BufferedImage(60, 40, BufferedImage.TYPE_BYTE_GRAY);
        try (PDPageContentStream out = new PDPageContentStream(
                document, document.getPage(0), PDPageContentStream.AppendMode.APPEND, true, true)) {
            out.drawImage(LosslessFactory.createFromImage(document, scan), 50, 110, 60, 40);
        }
        return this;
    }

    /** With a half transparent group in its upper left part. */
    OriginalSheet withGroup() throws IOException {
        PDFormXObject group = new PDFormXObject(document);
        COSDictionary transparency = new COSDictionary();
        transparency.setName(COSName.S, "Transparency");
        group.getCOSObject().setItem(COSName.GROUP, transparency);
        group.setBBox(new PDRectangle(0, 0, 60, 40));
        group.setResources(new PDResources());
        try (PDFormContentStream out = new PDFormContentStream(group)) {
            out.addRect(0, 0, 60, 40);
            out.fill();
        }
        PDExtendedGraphicsState half = new PDExtendedGraphicsState();
        half.setNonStrokingAlphaConstant(0.5f);
        try (PDPageContentStream out = new PDPageContentStream(
                document, document.getPage(0), PDPageContentStream.AppendMode.APPEND, true, true)) {
            out.setGraphicsStateParameters(half);
            out.transform(Matrix.getTranslateInstance(50, 110));
            out.drawForm(group);
        }
        return this;
    }

    Original original() {
        return Original.find(document, 1).orElseThrow();
    }
}
