package linewalk.renderer.scheme;

/**
 * A node of a scheme; two nodes are never equal.
 *
 * @see Scheme
 */
public final class Node {

    private final String name;
    private final Figure figure;
    private final double height;
    private final Size size;

    /**
     * @param name unique in the scheme and the same in every run
     * @param height 0 at pump and tank, 1 at the actuators: what is higher is drawn above
     */
    public Node(String name, Figure figure, double height) {
        this.name = name;
        this.figure = figure;
        this.height = height;
        size = new Size(figure.widthPt(), figure.heightPt());
    }

    public String name() {
        return name;
    }

    public Figure figure() {
        return figure;
    }

    double height() {
        return height;
    }

    /** Of the figure, measured once. */
    Size size() {
        return size;
    }

    @Override
    public String toString() {
        return name;
    }
}
