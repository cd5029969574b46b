package linewalk.renderer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Sheet;

/** What the titles of a set's sheets begin with names the set; what follows names the sheet. */
final class SheetTitles {

    private static final String BETWEEN = ", ";
    /** Of the sheets that have a title. */
    private static final double MOST = 2.0 / 3;

    private final String lead;

    private SheetTitles(String lead) {
        this.lead = lead;
    }

    static SheetTitles of(DrawingSet set) {
        List<List<String>> titles = set.sheets().stream()
                .map(Sheet::title)
                .filter(Objects::nonNull)
                .map(t -> Arrays.asList(t.split(BETWEEN)))
                .toList();
        List<String> lead = new ArrayList<>();
        for (List<String> title : titles) {
            int common = 0;
            while (common < title.size() && areMost(titles, title.subList(0, common + 1))) {
                common++;
            }
            if (common > lead.size()) {
                lead = title.subList(0, common);
            }
        }
        return new SheetTitles(String.join(BETWEEN, lead));
    }

    /** The set of a print, by the name it was given and by what its sheets call it. */
    static String set(PrintJob job) {
        String lead = of(job.set()).lead();
        return lead.isEmpty() ? job.facts().title() : job.facts().title() + ": " + lead;
    }

    private static boolean areMost(List<List<String>> titles, List<String> lead) {
        long with = titles.stream()
                .filter(t ->
                        t.size() >= lead.size() && t.subList(0, lead.size()).equals(lead))
                .count();
        return with > 1 && with >= MOST * titles.size();
    }

    /** Empty where the titles have nothing in common. */
    String lead() {
        return lead;
    }

    /** A sheet's own part of its title; all of it where nothing else would be left. */
    String own(String title) {
        String start = lead + BETWEEN;
        return !lead.isEmpty() && title.startsWith(start) ? title.substring(start.length()) : title;
    }
}
