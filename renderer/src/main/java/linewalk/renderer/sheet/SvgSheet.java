package linewalk.renderer.sheet;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The document of one page: title, typeface, white paper, cuttings, drawing. */
final class SvgSheet {

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final double MM_PER_PT = 25.4 / 72;

    private final Document document;
    private final SVGGeneratorContext context;
    private final Element root;
    private final Element style;
    private int clips;

    SvgSheet(double widthPt, double heightPt, String title) {
        document = newDocument();
        context = SVGGeneratorContext.createDefault(document);
        root = element(context, "svg");
        document.appendChild(root);
        root.setAttribute("xml:lang", "en");
        root.setAttribute("width", mm(widthPt));
        root.setAttribute("height", mm(heightPt));
        root.setAttribute("viewBox", "0 0 " + widthPt + " " + heightPt);
        append(root, "title").setTextContent(title);
        style = append(root, "style");
        Element paper = append(root, "rect");
        paper.setAttribute("width", String.valueOf(widthPt));
        paper.setAttribute("height", String.valueOf(heightPt));
        paper.setAttribute("fill", "white");
    }

    private static Document newDocument() {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no XML", e);
        }
    }

    private static String mm(double pt) {
        return Math.round(pt * MM_PER_PT * 100) / 100.0 + "mm";
    }

    SVGGeneratorContext context() {
        return context;
    }

    static Element element(SVGGeneratorContext context, String name) {
        return context.getDOMFactory().createElementNS(SVG, name);
    }

    private Element append(Element parent, String name) {
        Element e = element(context, name);
        parent.appendChild(e);
        return e;
    }

    /** Adds a cutting over what was added before. */
    void add(Cutting cutting) throws IOException {
        String id = "cutting" + ++clips;
        Element path = append(root, "clipPath");
        path.setAttribute("id", id);
        Rectangle2D clip = cutting.clip();
        Element rect = append(path, "rect");
        rect.setAttribute("x", String.valueOf(clip.getX()));
        rect.setAttribute("y", String.valueOf(clip.getY()));
        rect.setAttribute("width", String.valueOf(clip.getWidth()));
        rect.setAttribute("height", String.valueOf(clip.getHeight()));
        Element clipped = append(root, "g");
        clipped.setAttribute("clip-path", "url(#" + id + ")");
        clipped.appendChild(new SvgCutting(cutting, context).element());
    }

    /** Adds what was drawn over what was added before. */
    void add(SVGGraphics2D drawing) {
        root.appendChild(group(context, drawing));
    }

    /** What was drawn; only differences from the default pen and type are told in it, so these are told first. */
    static Element group(SVGGeneratorContext context, SVGGraphics2D drawing) {
        Element group = element(context, "g");
        drawing.getDOMTreeManager().applyDefaultRenderingStyle(group);
        group.appendChild(drawing.getTopLevelGroup());
        return group;
    }

    byte[] bytes() throws IOException {
        // measured by Java without pair kerning, at any size; browsers would kern and round to dots
        style.setTextContent("@font-face{font-family:'" + Lettering.FAMILY + "';src:url("
                + SvgTypeface.dataUri(characters()) + ") format('truetype')}"
                + "text{font-kerning:none;font-variant-ligatures:none;text-rendering:geometricPrecision}");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            TransformerFactory.newInstance().newTransformer().transform(new DOMSource(document), new StreamResult(out));
        } catch (TransformerException e) {
            throw new IOException("the page cannot be put down as XML", e);
        }
        return out.toByteArray();
    }

    private Set<Integer> characters() {
        Set<Integer> found = new TreeSet<>();
        NodeList texts = document.getElementsByTagNameNS(SVG, "text");
        for (int i = 0; i < texts.getLength(); i++) {
            texts.item(i).getTextContent().codePoints().forEach(found::add);
        }
        return found;
    }
}
