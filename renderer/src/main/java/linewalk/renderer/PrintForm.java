package linewalk.renderer;

import java.util.Set;

/**
 * The form in which a print is made.
 *
 * @param upright the paper's short side is its width
 * @param hidden layers that are left out
 */
public record PrintForm(Paper paper, boolean upright, Look look, Set<Layer> hidden) {

    /** Less has no room for a column of words beside the picture. */
    private static final double WIDE_PT = 1000;

    public PrintForm {
        hidden = Set.copyOf(hidden);
    }

    double widthPt() {
        return upright ? paper.heightPt() : paper.widthPt();
    }

    double heightPt() {
        return upright ? paper.widthPt() : paper.heightPt();
    }

    /** Wide enough for a column of text beside the picture. */
    boolean isWide() {
        return widthPt() > WIDE_PT;
    }
}
