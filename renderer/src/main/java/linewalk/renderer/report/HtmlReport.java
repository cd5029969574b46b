package linewalk.renderer.report;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import linewalk.drawing.Finding;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.renderer.report.Places.Place;

/** One page that needs nothing else: each finding with small pictures of its places, sheet by sheet. */
public final class HtmlReport {

    /** A finding about many references is shown at a few of them. */
    private static final int SHOWN = 2;

    private static final String STYLE = """
            body{font:15px/1.45 system-ui,sans-serif;margin:2rem auto;max-width:62rem;padding:0 1rem;color:#1c2226}
            h1{font-size:1.5rem}h2{font-size:1.15rem;margin-top:2.2rem;border-bottom:1px solid #c9d0d4}
            article{margin:1.1rem 0;padding:.7rem 1rem;border-left:5px solid #8a949a;background:#f6f8f8}
            article.error{border-color:#b3261e}article.warning{border-color:#b97a00}
            h3{font-size:1rem;margin:.1rem 0}code{color:#5a656b}p{margin:.35rem 0}
            figure{display:inline-block;margin:.5rem .8rem .2rem 0}img{border:1px solid #c9d0d4;max-width:100%}
            figcaption{font-size:.85rem;color:#5a656b}nav a{margin-right:.8rem}
            @media print{article{break-inside:avoid;background:none}}
            """;

    private final Report report;
    private final Map<String, Reference> references = new HashMap<>();
    private final StringBuilder page = new StringBuilder();
    private Map<Place, String> pictures = Map.of();

    private HtmlReport(Report report) {
        this.report = report;
        report.set().references().forEach(r -> references.put(r.id(), r));
    }

    public static String of(Report report) {
        return new HtmlReport(report).write();
    }

    private String write() {
        Map<Sheet, List<Finding>> bySheet = report.bySheet();
        Places places = new Places(report.set().sheets());
        bySheet.values().forEach(list -> list.forEach(f -> places(f).forEach(p -> places.want(p.page(), p.at()))));
        pictures = places.draw(report.sources());
        page.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">")
                .append("<meta name=\"viewport\" content=\"width=device-width\"><title>Check of ")
                .append(safe(report.title()))
                .append("</title><style>")
                .append(STYLE)
                .append("</style></head><body>\n<h1>Check of ")
                .append(safe(report.title()))
                .append("</h1>\n<p>")
                .append(safe(report.date() + ", " + report.summary()))
                .append(". A check is only as sure as the reading of the drawings.</p>\n");
        contents(bySheet);
        bySheet.forEach(this::sheet);
        kept();
        return page.append("</body></html>\n").toString();
    }

    private void contents(Map<Sheet, List<Finding>> bySheet) {
        page.append("<nav>");
        bySheet.forEach((sheet, findings) -> page.append("<a href=\"#")
                .append(anchor(sheet))
                .append("\">")
                .append(safe(name(sheet)))
                .append(" (")
                .append(findings.size())
                .append(")</a> "));
        page.append("</nav>\n");
    }

    private static String name(Sheet sheet) {
        return sheet == null ? "The set" : "Sheet " + sheet.name();
    }

    private String anchor(Sheet sheet) {
        return sheet == null ? "set" : "s" + report.set().sheets().indexOf(sheet);
    }

    private void sheet(Sheet sheet, List<Finding> findings) {
        String title = sheet == null || sheet.title() == null ? "" : ": " + sheet.title();
        page.append("<h2 id=\"")
                .append(anchor(sheet))
                .append("\">")
                .append(safe(name(sheet) + title))
                .append("</h2>\n");
        findings.forEach(this::finding);
    }

    private void finding(Finding f) {
        page.append("<article class=\"")
                .append(Report.word(f.severity()))
                .append("\"><h3>")
                .append(safe(report.where(f) + ": " + Report.word(f.severity()) + ", "
                        + f.rule().word()))
                .append(" <code>")
                .append(f.id())
                .append("</code></h3><p>")
                .append(safe(f.message()))
                .append("</p>");
        if (f.remedy() != null) {
            page.append("<p><b>Likely remedy:</b> ").append(safe(f.remedy())).append("</p>");
        }
        places(f).forEach(this::picture);
        page.append("</article>\n");
    }

    private void picture(Place p) {
        String png = pictures.get(p);
        if (png != null) {
            String where = safe(report.set().address(p.page(), p.at()));
            page.append("<figure><img width=\"")
                    .append(Places.WIDTH_PX)
                    .append("\" height=\"")
                    .append(Places.HEIGHT_PX)
                    .append("\" alt=\"")
                    .append(where)
                    .append("\" src=\"data:image/png;base64,")
                    .append(png)
                    .append("\"><figcaption>")
                    .append(where)
                    .append("</figcaption></figure>");
        }
    }

    /** Its own place, and those of further references that it names. */
    private Set<Place> places(Finding f) {
        Set<Place> places = new LinkedHashSet<>();
        if (f.page() != null && f.place() != null) {
            places.add(new Place(f.page(), f.place()));
        }
        f.references().stream()
                .map(references::get)
                .filter(r -> r != null)
                .map(r -> new Place(r.page(), r.place()))
                .limit(SHOWN)
                .forEach(places::add);
        return places;
    }

    private void kept() {
        if (!report.kept().isEmpty()) {
            page.append("<h2>Kept as they are</h2>\n<ul>");
            report.kept().forEach(f -> page.append("<li>")
                    .append(safe(report.where(f) + ", " + f.rule().word() + ": " + f.message() + " Kept: " + f.kept()))
                    .append("</li>"));
            page.append("</ul>\n");
        }
    }

    private static String safe(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
