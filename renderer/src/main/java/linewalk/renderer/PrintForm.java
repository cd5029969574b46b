package linewalk.renderer;

import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/**
 * The form in which a print is made.
 *
 * @param turn how the paper lies
 * @param hidden layers that are left out
 * @param withCard a job card follows
 */
public record PrintForm(Paper paper, Turn turn, Look look, Set<Layer> hidden, boolean withCard) {

    /** Less has no room for a column of words beside the picture. */
    private static final double WIDE_PT = 1000;

    public PrintForm {
        hidden = Collections.unmodifiableSet(new TreeSet<>(hidden));
    }

    /** A print alone. */
    public PrintForm(Paper paper, Turn turn, Look look, Set<Layer> hidden) {
        this(paper, turn, look, hidden, false);
    }

    PrintForm turned(Turn to) {
        return new PrintForm(paper, to, look, hidden, withCard);
    }

    double widthPt() {
        return turn == Turn.PORTRAIT ? paper.heightPt() : paper.widthPt();
    }

    double heightPt() {
        return turn == Turn.PORTRAIT ? paper.widthPt() : paper.heightPt();
    }

    /** Wide enough for a column of text beside the picture. */
    boolean isWide() {
        return widthPt() > WIDE_PT;
    }
}
