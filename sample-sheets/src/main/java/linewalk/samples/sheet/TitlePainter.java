package linewalk.samples.sheet;

import java.util.ArrayList;
import java.util.List;
import linewalk.samples.machine.Machine;
import linewalk.samples.machine.SheetPlan;
import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.Grid;
import linewalk.samples.symbol.Ink;
import linewalk.samples.symbol.Lettering;
import linewalk.samples.symbol.Pen;

/** Title block, revision table and notes, in millimetres. */
final class TitlePainter {
    static final double SIDE_WIDTH = 76;
    private static final String FIRST_DATE = "2024-03-11";

    private final Machine machine;
    private final DraftingStyle style;
    private final Grid grid;
    private final ScaledInk ink;

    TitlePainter(Machine machine, DraftingStyle style, ScaledInk ink) {
        this.machine = machine;
        this.style = style;
        this.grid = style.grid();
        this.ink = ink;
    }

    void paint(SheetPlan sheet) {
        ink.as(DrawnText.Role.TITLE);
        switch (style.title()) {
            case ISO -> iso(sheet);
            case ASME -> asme(sheet);
            case STRIP -> strip(sheet);
            case SIDE -> side(sheet);
        }
        ink.as(DrawnText.Role.OTHER);
        notes(sheet);
    }

    private void iso(SheetPlan sheet) {
        double x = grid.rightMm() - 180;
        double y = grid.bottomMm() - 46;
        cell(x, y, 60, 12, "Responsible dept.", "FERRY BERTHS", 3);
        cell(x + 60, y, 60, 12, "Technical reference", "LINK-SPAN", 3);
        cell(x + 120, y, 60, 12, "Document type", "CIRCUIT / INSTALLATION", 3);
        cell(x, y + 12, 180, 18, "Title", "", 3);
        ink.text(Lettering.left(3.6).inBold(), x + 2, y + 19, machine.name());
        ink.text(Lettering.left(3.6).inBold(), x + 2, y + 26, sheet.title());
        cell(x, y + 30, 60, 16, "Document number", machine.drawingNumber(), 4.2);
        cell(x + 60, y + 30, 36, 16, "Date of issue", lastDate(sheet), 3.2);
        cell(x + 96, y + 30, 18, 16, "Rev.", sheet.revision(), 4.2);
        cell(x + 114, y + 30, 26, 16, "Format", style.widthMm() == 841 ? "A1" : "B1", 3.2);
        cell(x + 140, y + 30, 40, 16, "Sheet", style.sheetName(sheet.number()) + " / " + sheets(), 5);
        revisions(sheet, x, y - 4 - 5 * (sheet.revisions().size() + 1), List.of(14.0, 16.0, 120.0, 30.0), 5, 2.6);
    }

    private void asme(SheetPlan sheet) {
        double x = grid.rightMm() - 165;
        double y = grid.bottomMm() - 58;
        cell(x, y, 55, 24, "UNLESS OTHERWISE STATED", "INCHES - PSI - GPM", 2.8);
        cell(x + 55, y, 110, 11, "", "HARBOUR WORKS - LINK-SPAN", 3.2);
        cell(x + 55, y + 11, 110, 13, "TITLE", "", 3);
        ink.text(Lettering.left(2.9).inBold(), x + 58, y + 18.5, "FERRY LINK-SPAN, BERTH 2 - HYDRAULICS");
        cell(x, y + 24, 165, 12, "", sheet.title(), 3.2);
        cell(x, y + 36, 20, 22, "SIZE", "D", 4.4);
        cell(x + 20, y + 36, 70, 22, "DWG NO.", machine.drawingNumber(), 4.4);
        cell(x + 90, y + 36, 20, 22, "REV", sheet.revision(), 4.4);
        cell(x + 110, y + 36, 55, 11, "SCALE", "NONE", 2.8);
        cell(x + 110, y + 47, 55, 11, "", "SHEET " + style.sheetName(sheet.number()) + " OF " + sheets(), 3.2);
        revisions(sheet, grid.rightMm() - 140, grid.topMm(), List.of(12.0, 16.0, 80.0, 32.0), 5.5, 2.6);
    }

    private void strip(SheetPlan sheet) {
        double y = grid.bottomMm() - 14;
        double x = grid.leftMm();
        double width = grid.rightMm() - x;
        cell(x, y, 150, 14, "PROJECT", machine.name(), 2.4);
        cell(x + 150, y, 150, 14, "SHEET TITLE", sheet.title(), 2.4);
        cell(x + 300, y, 60, 14, "DRAWING", machine.drawingNumber(), 3.2);
        cell(x + 360, y, 45, 14, "DATE", lastDate(sheet), 2.6);
        cell(x + 405, y, 40, 14, "DRAWN / CHECKED", "KB / TO", 2.6);
        cell(x + 445, y, 22, 14, "REV", sheet.revision(), 3.2);
        cell(x + 467, y, width - 467, 14, "SHEET", style.sheetName(sheet.number()) + " OF " + sheets(), 4);
        revisions(
                sheet,
                grid.rightMm() - 120,
                y - 2.5 - 4 * (sheet.revisions().size() + 1),
                List.of(10.0, 12.0, 70.0, 28.0),
                4,
                2.1);
    }

    private void side(SheetPlan sheet) {
        double width = SIDE_WIDTH;
        double x = grid.rightMm() - width;
        double y = grid.bottomMm();
        ink.line(Pen.FRAME, x, grid.topMm(), x, y);
        cell(x, y - 22, width / 2, 22, "SHEET", style.sheetName(sheet.number()), 7);
        cell(x + width / 2, y - 22, width / 2, 22, "OF", Integer.toString(sheets()), 4);
        cell(x, y - 38, width * 0.7, 16, "DRAWING NO.", machine.drawingNumber(), 4);
        cell(x + width * 0.7, y - 38, width * 0.3, 16, "REV.", sheet.revision(), 4);
        cell(x, y - 50, width / 2, 12, "DATE", lastDate(sheet), 2.8);
        cell(x + width / 2, y - 50, width / 2, 12, "SCALE", "NTS", 2.8);
        lines(x, y - 76, "SHEET TITLE", sheet.title());
        lines(x, y - 102, "INSTALLATION", machine.name());
        cell(x, y - 116, width, 14, "OWNER", "FERRY BERTHS", 3);
        revisions(sheet, x, grid.topMm(), List.of(9.0, 10.0, 37.0, width - 56), 5, 2);
    }

    /** A cell with a line of text for each part of it between dashes. */
    private void lines(double x, double y, String caption, String text) {
        cell(x, y, SIDE_WIDTH, 26, caption, "", 3);
        double at = y + 8;
        for (String part : text.split(" - |, (?=LOCK|PORT)")) {
            ink.text(Lettering.left(3).inBold(), x + 2, at, part);
            at += 6;
        }
    }

    private int sheets() {
        return machine.sheets().size();
    }

    private static String lastDate(SheetPlan sheet) {
        List<List<String>> revisions = sheet.revisions();
        return revisions.isEmpty()
                ? FIRST_DATE
                : revisions.get(revisions.size() - 1).get(3);
    }

    private void revisions(
            SheetPlan sheet, double x, double y, List<Double> widths, double rowHeight, double textHeight) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("REV", "ZONE", "DESCRIPTION", "DATE"));
        rows.addAll(sheet.revisions());
        ink.as(DrawnText.Role.OTHER);
        TablePainter.paint(ink, x, y, widths, rowHeight, textHeight, rows);
    }

    private void cell(double x, double y, double width, double height, String caption, String text, double size) {
        Ink on = ink.as(DrawnText.Role.TITLE);
        on.closed(Pen.OUTLINE, x, y, x + width, y, x + width, y + height, x, y + height);
        if (!caption.isEmpty()) {
            on.text(Lettering.left(1.8), x + 1.2, y + 2, caption);
        }
        if (!text.isEmpty()) {
            double below = caption.isEmpty() ? height / 2 : height / 2 + 1.4;
            on.text(Lettering.left(size).inBold(), x + 2, y + below, text);
        }
    }

    private void notes(SheetPlan sheet) {
        double size = style.unitMm() * 0.27;
        double step = size * 1.9;
        double bottom = grid.bottomMm() - (style.title() == DraftingStyle.TitleForm.STRIP ? 20 : 8);
        double x = grid.leftMm() + 12;
        int count = sheet.notes().size();
        ink.text(Lettering.left(size * 1.15).inBold(), x, bottom - step * count, "NOTES");
        for (int i = 0; i < count; i++) {
            double y = bottom - step * (count - 1 - i);
            ink.text(Lettering.left(size), x, y, (i + 1) + "  " + sheet.notes().get(i));
        }
    }
}
