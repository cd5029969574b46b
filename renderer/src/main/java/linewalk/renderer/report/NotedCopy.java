package linewalk.renderer.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Box;
import linewalk.drawing.Finding;
import linewalk.drawing.PageKey;
import linewalk.drawing.Point;
import linewalk.drawing.Severity;
import linewalk.drawing.Sheet;
import linewalk.renderer.copy.OnPage;
import linewalk.renderer.copy.SourceCopy;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationText;

/** A source with each finding as a text annotation at its place; the original's bytes stand at the start of the file. */
public final class NotedCopy {

    private static final double SIZE_PT = 20;

    /** What concerns a whole sheet stands in its upper left corner, one below the other. */
    private static final double CORNER_PT = 40;

    private final Report report;
    private final Map<Integer, Integer> inCorner = new LinkedHashMap<>();
    private final Map<PageKey, Sheet> sheets = new LinkedHashMap<>();

    private NotedCopy(Report report) {
        this.report = report;
        report.set().sheets().forEach(s -> sheets.put(s.page(), s));
    }

    /**
     * @param source as the set names it; what concerns the whole set stands on the first page of each
     * @return how many notes were written
     * @throws linewalk.drawing.UserError where the source can't be read or added to
     */
    public static int write(Report report, String source, OutputStream out) throws IOException {
        try (SourceCopy copy = SourceCopy.open(report.sources().apply(source))) {
            return new NotedCopy(report).write(copy, source, out);
        }
    }

    private int write(SourceCopy copy, String source, OutputStream out) throws IOException {
        Map<Integer, List<PDAnnotation>> notes = new LinkedHashMap<>();
        for (Finding f : report.set().findings()) {
            PageKey page = f.page() == null ? new PageKey(source, 1) : f.page();
            if (f.kept() == null && page.source().equals(source) && sheets.containsKey(page)) {
                PDAnnotationText note = note(f, sheets.get(page));
                note.constructAppearances(copy.document());
                notes.computeIfAbsent(page.page(), k -> new ArrayList<>()).add(note);
            }
        }
        notes.forEach(copy::annotate);
        copy.write(out);
        return notes.values().stream().mapToInt(List::size).sum();
    }

    private PDAnnotationText note(Finding f, Sheet sheet) {
        PDAnnotationText note = new PDAnnotationText();
        Point at = f.place() == null ? corner(sheet) : f.place();
        note.setRectangle(OnPage.rectangle(
                sheet, new Box(at.xPt(), at.yPt() - 2 * SIZE_PT, at.xPt() + SIZE_PT, at.yPt() - SIZE_PT)));
        note.setName(PDAnnotationText.NAME_NOTE);
        note.setTitlePopup("Linewalk: " + Report.word(f.severity()));
        note.setSubject(f.rule().word());
        note.setContents(
                f.message() + (f.remedy() == null ? "" : "\nLikely remedy: " + f.remedy()) + "\n[" + f.id() + "]");
        note.setColor(colour(f.severity()));
        note.setNoRotate(true);
        note.setNoZoom(true);
        note.setPrinted(false);
        return note;
    }

    private Point corner(Sheet sheet) {
        int n = inCorner.merge(sheet.page().page(), 1, Integer::sum);
        return new Point(CORNER_PT, CORNER_PT + n * 1.3 * SIZE_PT);
    }

    private static PDColor colour(Severity s) {
        float[] rgb =
                switch (s) {
                    case ERROR -> new float[] {0.9f, 0.3f, 0.25f};
                    case WARNING -> new float[] {1f, 0.75f, 0.2f};
                    case NOTE -> new float[] {0.75f, 0.85f, 0.95f};
                };
        return new PDColor(rgb, PDDeviceRGB.INSTANCE);
    }
}
