package linewalk.renderer.sheet;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Image;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;

/** Takes strokes and fills that touch a clip into SVG, and notices what is neither. */
final class VectorGraphics extends SVGGraphics2D {

    private final Rectangle2D clip;
    private final boolean[] plain;

    /** @param clip in dots; what lies outside is left out */
    VectorGraphics(SVGGeneratorContext context, Rectangle2D clip) {
        super(context, false);
        this.clip = clip;
        plain = new boolean[] {true};
    }

    private VectorGraphics(VectorGraphics other) {
        super(other);
        clip = other.clip;
        plain = other.plain;
    }

    /** Nothing seen was other than strokes and fills of one colour. */
    boolean isPlain() {
        return plain[0];
    }

    @Override
    public Graphics create() {
        return new VectorGraphics(this);
    }

    @Override
    public void fill(Shape shape) {
        if (isSeen(shape.getBounds2D(), 0)) {
            super.fill(shape);
            note(getPaint() instanceof Color && getComposite() instanceof AlphaComposite);
        }
    }

    @Override
    public void draw(Shape shape) {
        double marginPt = getStroke() instanceof BasicStroke s ? s.getLineWidth() * s.getMiterLimit() : 0;
        if (isSeen(shape.getBounds2D(), marginPt)) {
            super.draw(shape);
            note(getPaint() instanceof Color && getComposite() instanceof AlphaComposite);
        }
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        // the paper is white
    }

    @Override
    public boolean drawImage(Image image, AffineTransform toUser, ImageObserver observer) {
        Rectangle2D all = new Rectangle2D.Double(0, 0, image.getWidth(null), image.getHeight(null));
        AffineTransform at = toUser == null ? new AffineTransform() : toUser;
        note(!isSeen(at.createTransformedShape(all).getBounds2D(), 0));
        return true;
    }

    @Override
    public boolean drawImage(Image image, int x, int y, ImageObserver observer) {
        return drawImage(image, AffineTransform.getTranslateInstance(x, y), observer);
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp op, int x, int y) {
        drawImage(image, x, y, null);
    }

    private void note(boolean isPlain) {
        plain[0] &= isPlain;
    }

    private boolean isSeen(Rectangle2D user, double marginPt) {
        Rectangle2D grown = new Rectangle2D.Double(
                user.getX() - marginPt,
                user.getY() - marginPt,
                user.getWidth() + 2 * marginPt,
                user.getHeight() + 2 * marginPt);
        Rectangle2D dots = getTransform().createTransformedShape(grown).getBounds2D();
        return dots.getMaxX() >= clip.getMinX()
                && dots.getMinX() <= clip.getMaxX()
                && dots.getMaxY() >= clip.getMinY()
                && dots.getMinY() <= clip.getMaxY();
    }
}
