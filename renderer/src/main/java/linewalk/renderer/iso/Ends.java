package linewalk.renderer.iso;

/** What stands at a line's end. */
final class Ends {

    private Ends() {}

    /** One port below; more put it into a housing. */
    static Plan below(Drafting d, Body body, double x) {
        return d.uses().size() > 1
                ? Housing.standing(body, d)
                : new Plan(
                        body,
                        d.uses().stream().map(u -> new Dock(u, Side.BOTTOM, x)).toList());
    }

    /** Open above; every line ends under the oil's level. */
    static Plan tank(Drafting d) {
        double width = Math.max(7, Shelf.extent(d.uses(), 2) + 1);
        Body body = new Body(width, 3, p -> p.lines(0.1, 0.75, 0.1, 2.9, width - 0.1, 2.9, width - 0.1, 0.75));
        return new Plan(
                body,
                Shelf.row(d.uses(), Side.TOP, width, 2).stream()
                        .map(k -> k.reaching(2))
                        .toList());
    }

    /** Gas above, oil below. */
    static Plan accumulator(Drafting d) {
        return below(
                d,
                new Body(4, 6.5, p -> {
                    p.arc(2, 1.75, 1.5, 0, 180);
                    p.arc(2, 4.25, 1.5, 180, 180);
                    p.lines(0.5, 1.75, 0.5, 4.25);
                    p.lines(3.5, 1.75, 3.5, 4.25);
                    p.lines(0.5, 3, 3.5, 3);
                    p.outline(2, 2.2, 1.3, 1, 2.7, 1);
                    p.lines(2, 5.75, 2, 6.5);
                }),
                2);
    }

    static Plan gauge(Drafting d) {
        return below(
                d,
                new Body(4.5, 5, p -> {
                    p.circle(2.25, 2.25, 2);
                    p.arrow(1.2, 3.3, 3.3, 1.2);
                    p.lines(2.25, 4.25, 2.25, 5);
                }),
                2.25);
    }

    /** A coupling that its own check keeps shut, under a cap. */
    static Plan testPoint(Drafting d) {
        return below(
                d,
                new Body(4, 4.25, p -> {
                    p.lines(0.6, 1, 0.6, 0.2, 3.4, 0.2, 3.4, 1);
                    Pen q = p.flipped(true, 4.25);
                    Signs.check(q, 2, 1.75);
                    p.lines(2, 3.5, 2, 4.25);
                }),
                2);
    }

    /** A square with an electric contact. */
    static Plan pressureSwitch(Drafting d) {
        return below(
                d,
                new Body(4.5, 5, p -> {
                    p.rect(0.25, 0.25, 4, 4);
                    p.lines(0.25, 2.25, 1.4, 2.25, 2.9, 1.3);
                    p.lines(3, 2.25, 4.25, 2.25);
                    p.dot(1.4, 2.25);
                    p.dot(3, 2.25);
                    p.lines(2.25, 4.25, 2.25, 5);
                }),
                2.25);
    }

    static Plan plug(Drafting d) {
        return below(
                d,
                new Body(2, 1.25, p -> {
                    p.lines(1, 1.25, 1, 0.25);
                    p.heavy(0.25, 0.2, 1.75, 0.2);
                }),
                1);
    }
}
