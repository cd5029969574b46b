package linewalk.tests.quality;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A print as measured. Figures of lines, symbols and the field are there only where the print marks any: what is not
 * marked is not measured, which is not the same as none.
 *
 * @param figures by name; those that begin with {@code overlap.} count {@code overlaps} of that kind
 */
record Quality(Map<String, Double> figures, List<Overlap> overlaps) {

    private static final List<String> OF_TEXT = List.of("text-text", "text-stroke", "text-cutting");
    private static final List<String> OF_SYMBOLS = List.of("text-symbol", "symbol-symbol");
    private static final List<String> OF_LINES = List.of("text-line", "line-line", "line-symbol", "line-astray");
    private static final List<String> COLUMNS = List.of(
            "overlap.text-text",
            "overlap.text-line",
            "overlap.text-symbol",
            "overlap.text-stroke",
            "overlap.text-cutting",
            "overlap.symbol-symbol",
            "overlap.line-symbol",
            "overlap.line-line",
            "overlap.line-astray",
            "lines.bends",
            "lines.crossings",
            "lines.needless",
            "lines.mm",
            "match.marks",
            "empty.share",
            "capitals.mm",
            "cutting.capitals.mm");

    private static final double MM_PER_PT = 25.4 / 72;

    static Quality of(Path pdf) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return of(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Quality of(PDDocument document) throws IOException {
        List<PrintPage> pages = pages(document);
        List<Overlap> overlaps = overlaps(pages);
        return new Quality(figures(pages, overlaps), overlaps);
    }

    static List<PrintPage> pages(PDDocument document) throws IOException {
        List<PrintPage> pages = new ArrayList<>();
        for (int i = 0; i < document.getNumberOfPages(); i++) {
            pages.add(PageReader.read(document.getPage(i), i + 1));
        }
        return pages;
    }

    static List<Overlap> overlaps(List<PrintPage> pages) {
        List<Overlap> overlaps = new ArrayList<>();
        for (PrintPage p : pages) {
            overlaps.addAll(TextOverlaps.of(p));
            overlaps.addAll(SymbolOverlaps.of(p));
            overlaps.addAll(new LineWork(p).overlaps());
            overlaps.addAll(Truthfulness.astray(p));
        }
        return overlaps;
    }

    private static Map<String, Double> figures(List<PrintPage> pages, List<Overlap> overlaps) {
        List<String> kinds = new ArrayList<>(OF_TEXT);
        Map<String, Double> figures = new TreeMap<>();
        figures.put("pages", (double) pages.size());
        if (pages.stream().anyMatch(p -> !p.symbols().isEmpty())) {
            kinds.addAll(OF_SYMBOLS);
            figures.put("lines.needless", (double)
                    pages.stream().mapToInt(Quality::needlessCrossings).sum());
            figures.put("match.marks", (double)
                    pages.stream().mapToLong(Quality::matchMarks).sum());
        }
        if (pages.stream().anyMatch(p -> !p.lines().isEmpty())) {
            kinds.addAll(OF_LINES);
            lines(pages, figures);
        }
        kinds.forEach(k -> figures.put("overlap." + k, (double)
                overlaps.stream().filter(o -> o.kind().equals(k)).count()));
        emptiness(pages, figures);
        lettering(pages, figures);
        return figures;
    }

    private static void lines(List<PrintPage> pages, Map<String, Double> figures) {
        for (PrintPage p : pages) {
            LineWork lines = new LineWork(p);
            figures.merge("lines.bends", (double) lines.bends(), Double::sum);
            figures.merge("lines.crossings", (double) lines.crossings(), Double::sum);
            figures.merge("lines.mm", lines.lengthPt() * MM_PER_PT, Double::sum);
        }
    }

    /** Changes of two neighbours in a layer that would take crossings away. */
    static int needlessCrossings(PrintPage page) {
        return LayersOfPage.of(page).stream().mapToInt(l -> l.gains().size()).sum();
    }

    /** Ends at which a line is broken off, to go on at the same letter in another part of the page or on another page. */
    private static long matchMarks(PrintPage page) {
        return page.symbols().stream()
                .filter(s -> s.name().startsWith("match "))
                .count();
    }

    private static void emptiness(List<PrintPage> pages, Map<String, Double> figures) {
        double empty = 0;
        double all = 0;
        for (PrintPage p : pages) {
            int[] squares = EmptyField.of(p);
            empty += squares[0];
            all += squares[1];
        }
        if (all > 0) {
            figures.put("empty.share", empty / all);
        }
    }

    private static void lettering(List<PrintPage> pages, Map<String, Double> figures) {
        smallestCapitalsMm(pages).ifPresent(mm -> figures.put("capitals.mm", mm));
        pages.stream()
                .flatMap(p -> p.cuttingCapitalsPt().stream())
                .min(Double::compare)
                .ifPresent(pt -> figures.put("cutting.capitals.mm", pt * MM_PER_PT));
    }

    static OptionalDouble smallestCapitalsMm(List<PrintPage> pages) {
        return pages.stream()
                .flatMap(p -> p.texts().stream())
                .mapToDouble(t -> t.capitalPt() * MM_PER_PT)
                .min();
    }

    /** Names of the columns of {@link #row}. */
    static String head() {
        StringBuilder head = new StringBuilder(String.format("%-32s%6s", "print", "pages"));
        COLUMNS.forEach(c -> head.append(String.format(
                "%13s", c.replace("overlap.", "").replace("lines.", "").replace("cutting.capitals", "in cutt."))));
        return head.toString();
    }

    /** One row of a table of prints; a dash where nothing was measured. */
    String row(String print) {
        StringBuilder row = new StringBuilder(String.format("%-32s%6.0f", print, figures.get("pages")));
        for (String c : COLUMNS) {
            String form = c.endsWith("share") || c.endsWith("capitals.mm") ? "%13.2f" : "%13.0f";
            row.append(
                    figures.containsKey(c)
                            ? String.format(Locale.ROOT, form, figures.get(c))
                            : String.format("%13s", "-"));
        }
        return row.toString();
    }
}
