package linewalk.importer.stroke;

import java.util.List;
import linewalk.importer.stroke.ReadRow.Option;

/** An upright stroke behind a small letter of its word is an l, where lines with it were read so; else it is an I. */
final class SmallLetters {

    private SmallLetters() {}

    static void mend(Row row, List<ShapeClass> shapes, List<List<Option>> options, double blank) {
        for (int i = 1; i < options.size(); i++) {
            Option o = options.get(i).get(0);
            char before = options.get(i - 1).get(0).text().charAt(0);
            ShapeClass c = shapes.get(i);
            if (o.text().equals("I")
                    && Character.isLowerCase(before)
                    && row.gap(i - 1) < blank
                    && c != null
                    && c.votesFor("l") > 0) {
                options.set(i, List.of(new Option("l", o.likelihood())));
            }
        }
    }
}
