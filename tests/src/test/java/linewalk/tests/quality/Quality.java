package linewalk.tests.quality;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A print as measured.
 *
 * @param figures by name; those that begin with {@code overlap.} count {@code overlaps} of that kind
 */
record Quality(Map<String, Double> figures, List<Overlap> overlaps) {

    static final List<String> KINDS = List.of(
            "text-text",
            "text-line",
            "text-symbol",
            "text-stroke",
            "text-cutting",
            "symbol-symbol",
            "line-symbol",
            "line-line",
            "line-astray");

    private static final double MM_PER_PT = 25.4 / 72;

    static Quality of(Path pdf) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return of(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Quality of(PDDocument document) throws IOException {
        List<PrintPage> pages = new ArrayList<>();
        for (int i = 0; i < document.getNumberOfPages(); i++) {
            pages.add(PageReader.read(document.getPage(i), i + 1));
        }
        List<Overlap> overlaps = new ArrayList<>();
        for (PrintPage p : pages) {
            overlaps.addAll(TextOverlaps.of(p));
            overlaps.addAll(SymbolOverlaps.of(p));
            overlaps.addAll(new LineWork(p).overlaps());
            overlaps.addAll(Truthfulness.astray(p));
        }
        Map<String, Double> figures = new TreeMap<>();
        KINDS.forEach(k -> figures.put("overlap." + k, (double)
                overlaps.stream().filter(o -> o.kind().equals(k)).count()));
        measure(pages, figures);
        return new Quality(figures, overlaps);
    }

    private static void measure(List<PrintPage> pages, Map<String, Double> figures) {
        int bends = 0;
        int crossings = 0;
        double lengthPt = 0;
        double emptySquares = 0;
        double squares = 0;
        for (PrintPage p : pages) {
            LineWork lines = new LineWork(p);
            bends += lines.bends();
            crossings += lines.crossings();
            lengthPt += lines.lengthPt();
            int[] field = EmptyField.of(p);
            emptySquares += field[0];
            squares += field[1];
        }
        figures.put("pages", (double) pages.size());
        figures.put("lines.bends", (double) bends);
        figures.put("lines.crossings", (double) crossings);
        figures.put("lines.mm", lengthPt * MM_PER_PT);
        figures.put("empty.share", emptySquares / squares);
        double least = pages.stream()
                .flatMap(p -> p.texts().stream())
                .mapToDouble(Text::capitalPt)
                .min()
                .orElse(Double.NaN);
        figures.put("capitals.mm", least * MM_PER_PT);
        pages.stream()
                .flatMap(p -> p.cuttingCapitalsPt().stream())
                .min(Double::compare)
                .ifPresent(pt -> figures.put("cutting.capitals.mm", pt * MM_PER_PT));
    }

    /** Names of the figures in the order of {@link #row}. */
    static String head() {
        StringBuilder head = new StringBuilder(String.format("%-34s%6s", "print", "pages"));
        KINDS.forEach(k -> head.append(String.format("%14s", k)));
        return head.append("  bends  crossings  length mm  empty  capitals mm  in cuttings mm")
                .toString();
    }

    /** One row of a table of prints. */
    String row(String print) {
        StringBuilder row = new StringBuilder(String.format("%-34s%6.0f", print, figures.get("pages")));
        KINDS.forEach(k -> row.append(String.format("%14.0f", figures.get("overlap." + k))));
        return row.append(String.format(
                        Locale.ROOT,
                        "%7.0f%11.0f%11.0f%7.2f%13.2f%16s",
                        figures.get("lines.bends"),
                        figures.get("lines.crossings"),
                        figures.get("lines.mm"),
                        figures.get("empty.share"),
                        figures.get("capitals.mm"),
                        figures.containsKey("cutting.capitals.mm")
                                ? String.format(Locale.ROOT, "%.2f", figures.get("cutting.capitals.mm"))
                                : ""))
                .toString();
    }
}
