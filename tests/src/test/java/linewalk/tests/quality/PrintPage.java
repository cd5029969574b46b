package linewalk.tests.quality;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;

/**
 * All that one page of a print shows.
 *
 * @param cuttingCapitalsPt capital heights of the original's lettering seen in cuttings
 */
record PrintPage(
        int number,
        Rectangle2D paper,
        List<Paint> paints,
        List<Text> texts,
        List<Thing> things,
        List<Double> cuttingCapitalsPt) {

    PrintPage {
        paints = List.copyOf(paints);
        texts = List.copyOf(texts);
        things = List.copyOf(things);
        cuttingCapitalsPt = List.copyOf(cuttingCapitalsPt);
    }

    List<Thing.Line> lines() {
        return only(Thing.Line.class).toList();
    }

    List<Thing.Symbol> symbols() {
        return only(Thing.Symbol.class).toList();
    }

    List<Thing.Field> fields() {
        return only(Thing.Field.class).toList();
    }

    private <T> Stream<T> only(Class<T> kind) {
        return things.stream().filter(kind::isInstance).map(kind::cast);
    }
}
