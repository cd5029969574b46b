package linewalk.samples.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import linewalk.samples.machine.Furniture;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.style.DraftingStyle;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/** Draws the whole set as a PDF in one drafting style and tells what stands where. */
public final class SetDrawing {
    private final Machine machine;
    private final DraftingStyle style;

    public SetDrawing(Machine machine, DraftingStyle style) {
        this.machine = machine;
        this.style = style;
    }

    /** Writes the same bytes every time; returns the sheets in the order of pages. */
    public List<DrawnSheet> write(OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(2210L);
            document.setDocumentInformation(information());
            Fonts fonts = Fonts.of(document, style);
            Placer placer = new Placer(style, fonts);
            Map<Integer, Placement> placements = new HashMap<>();
            machine.sheets().forEach(sheet -> placements.put(sheet.number(), placer.place(sheet)));
            ReferenceBook book = new ReferenceBook(machine, style, placements, fonts);
            List<DrawnSheet> sheets = new ArrayList<>();
            for (int number : style.pageOrder()) {
                SheetPlan sheet = machine.sheets().get(number - 1);
                sheets.add(page(document, fonts, sheet, placements.get(number), book));
            }
            document.save(out);
            return List.copyOf(sheets);
        }
    }

    private PDDocumentInformation information() {
        Calendar date = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        date.setTimeInMillis(1_737_331_200_000L);
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(machine.name());
        information.setCreationDate(date);
        information.setModificationDate(date);
        return information;
    }

    private DrawnSheet page(PDDocument document, Fonts fonts, SheetPlan sheet, Placement placement, ReferenceBook book)
            throws IOException {
        PDPage page = new PDPage();
        Matrix toPage = PageSetup.apply(page, style);
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.transform(toPage);
            Canvas canvas = new Canvas(content, style, fonts);
            List<DrawnReference> references = paint(canvas, sheet, placement, book);
            return new DrawnSheet(
                    sheet, style.pageOf(sheet.number()), placement, references, canvas.texts(), canvas.strokes());
        }
    }

    private List<DrawnReference> paint(Canvas canvas, SheetPlan sheet, Placement placement, ReferenceBook book) {
        ScaledInk millimetres = ScaledInk.millimetres(canvas);
        new FramePainter(style, millimetres).paint();
        new TitlePainter(machine, style, millimetres).paint(sheet);
        ScaledInk units = ScaledInk.units(canvas, placement);
        FurniturePainter furniture = new FurniturePainter(units, style);
        for (Furniture thing : sheet.furniture()) {
            furniture.paint(thing);
        }
        NetPainter nets = new NetPainter(units, style, machine.lineSizes(), sheet);
        sheet.nets().forEach(nets::paint);
        PartPainter parts = new PartPainter(units, style.usUnits());
        sheet.parts().forEach(parts::paint);
        ReferencePainter painter = new ReferencePainter(units, style);
        List<DrawnReference> out = new ArrayList<>();
        sheet.references().forEach(reference -> {
            int before = canvas.texts().size();
            DrawnReference drawn = book.drawn(reference);
            painter.paint(drawn);
            Box box = canvas.texts().subList(before, canvas.texts().size()).stream()
                    .map(DrawnText::box)
                    .reduce(Box::join)
                    .orElseThrow();
            boolean letter = reference.isLetter();
            out.add(drawn.drawnAt(box, letter ? canvas.texts().get(before).box().centre() : box.centre()));
        });
        return List.copyOf(out);
    }
}
