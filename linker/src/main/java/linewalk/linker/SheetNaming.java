package linewalk.linker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Finding;
import linewalk.drawing.Origin;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.Rule;
import linewalk.drawing.SheetReading;
import linewalk.drawing.Target;

/**
 * Gives each sheet the name that references use. A name is judged with the whole set in view: used by references, not
 * shared with another page, likely on its own page. Pages named by hand are left alone; pages without any name get
 * the number of their place in the order.
 */
final class SheetNaming {

    private static final double USED = 1.0;
    private static final double SHARED = -0.4;
    private static final double UNPRINTED_DRAWING_NUMBER = 0.4;

    private record Choice(PageDraft page, String name, double score) {}

    private final List<PageDraft> pages;
    private final List<Finding> findings;
    private final Map<String, Integer> used = new HashMap<>();
    private final Map<String, Integer> pagesOffering = new HashMap<>();

    private SheetNaming(List<PageDraft> pages, List<Finding> findings) {
        this.pages = pages;
        this.findings = findings;
    }

    static void name(List<PageDraft> pages, List<Finding> findings) {
        SheetNaming naming = new SheetNaming(pages, findings);
        naming.count();
        naming.choose();
        naming.number();
    }

    private void count() {
        for (PageDraft p : pages) {
            Set<String> own = new HashSet<>();
            names(p).forEach(n -> own.add(Names.sheetKey(n.name())));
            own.forEach(k -> pagesOffering.merge(k, 1, Integer::sum));
            for (ReferenceReading r : p.reading.references()) {
                if (r.confidence() >= 0.5 && !r.readings().isEmpty()) {
                    for (Target t : r.readings().get(0).targets()) {
                        used.merge(Names.sheetKey(t.sheet()), 1, Integer::sum);
                    }
                }
            }
        }
    }

    private static List<SheetReading.Name> names(PageDraft p) {
        List<SheetReading.Name> names = new ArrayList<>(p.reading.names());
        String number = p.reading.drawingNumber();
        if (number != null && names.stream().noneMatch(n -> sameSheet(n.name(), number))) {
            names.add(new SheetReading.Name(number, UNPRINTED_DRAWING_NUMBER, "drawing number"));
        }
        names.removeIf(n -> Names.sheetKey(n.name()).isEmpty());
        return names;
    }

    private static boolean sameSheet(String a, String b) {
        return Names.sheetKey(a).equals(Names.sheetKey(b));
    }

    /** Best choices first; a name is given twice only where a page is left with no other name that counts. */
    private void choose() {
        Set<String> taken = new HashSet<>();
        pages.stream().filter(p -> p.name != null).forEach(p -> taken.add(Names.sheetKey(p.name)));
        List<Choice> choices = new ArrayList<>();
        for (PageDraft p : pages) {
            if (p.name == null) {
                names(p).stream()
                        .filter(n -> !isBeyond(p, n))
                        .forEach(n -> choices.add(new Choice(p, n.name(), score(n))));
            }
        }
        choices.sort(Comparator.comparingDouble(Choice::score)
                .reversed()
                .thenComparing(Choice::page, Comparator.comparing(p -> p.page))
                .thenComparing(Choice::name));
        for (Choice c : choices) {
            if (c.page.name == null && (!taken.contains(Names.sheetKey(c.name)) || printedSurely(c))) {
                give(c.page, c.name);
                taken.add(Names.sheetKey(c.name));
            }
        }
        choices.stream().filter(c -> c.page.name == null).forEach(c -> give(c.page, c.name));
    }

    /** There is no sheet 61 of 6: a number that no reference uses either was misread. */
    private boolean isBeyond(PageDraft p, SheetReading.Name n) {
        Integer count = p.reading.sheetCount();
        return count != null
                && n.name().matches("\\d{1,6}")
                && Integer.parseInt(n.name()) > count
                && !used.containsKey(Names.sheetKey(n.name()));
    }

    private double score(SheetReading.Name n) {
        String key = Names.sheetKey(n.name());
        boolean shared = pagesOffering.getOrDefault(key, 0) > 1;
        return n.likelihood() + (used.containsKey(key) ? USED : 0) + (shared ? SHARED : 0);
    }

    /** Two title blocks that plainly print one number are a drafting error, not a reading to be talked away. */
    private boolean printedSurely(Choice c) {
        return used.containsKey(Names.sheetKey(c.name))
                && names(c.page).stream().anyMatch(n -> n.name().equals(c.name) && n.likelihood() >= 0.9);
    }

    private static void give(PageDraft page, String name) {
        page.name = name;
        boolean ocr = page.reading.references().stream().anyMatch(r -> r.origin() == Origin.OCR);
        page.origin = ocr ? Origin.OCR : Origin.TEXT;
    }

    private void number() {
        Set<String> taken = new HashSet<>();
        pages.stream().filter(p -> p.name != null).forEach(p -> taken.add(Names.sheetKey(p.name)));
        List<PageDraft> unnumbered = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            PageDraft p = pages.get(i);
            if (p.name != null) {
                continue;
            }
            p.name = freeNumber(i, taken);
            p.origin = Origin.ORDER;
            taken.add(Names.sheetKey(p.name));
            unnumbered.add(p);
        }
        boolean all = unnumbered.size() == pages.size() && pages.size() > 1;
        if (all) {
            findings.add(unnumbered(
                    null, "No sheet prints a number that could be read; they are called by the order of pages."));
        } else {
            unnumbered.forEach(p -> findings.add(unnumbered(
                    p,
                    p.page + " prints no sheet number that could be read; it is called " + p.name
                            + " by the order of pages.")));
        }
    }

    private static Finding unnumbered(PageDraft page, String message) {
        return new Finding(
                Rule.SHEET_UNNUMBERED,
                page == null ? null : page.page,
                null,
                List.of(),
                List.of(),
                message,
                "give " + (page == null ? "each" : "it") + " its name with a sheet tag");
    }

    private String freeNumber(int index, Set<String> taken) {
        if (index > 0 && pages.get(index - 1).name.matches("\\d{1,6}")) {
            String next = Integer.toString(Integer.parseInt(pages.get(index - 1).name) + 1);
            if (!taken.contains(next)) {
                return next;
            }
        }
        String place = Integer.toString(index + 1);
        return taken.contains(place) ? "page " + place : place;
    }
}
