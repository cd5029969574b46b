package linewalk.drawing;

/**
 * One drawn sheet.
 *
 * @param name by which references name it: its number, else its drawing number
 * @param title or null
 * @param revision or null
 * @param origin how the name is known
 * @param grid null where the sheet has none
 * @param toPage see {@link SheetReading#toPage}
 */
public record Sheet(
        String name,
        PageKey page,
        double widthPt,
        double heightPt,
        String title,
        String revision,
        Origin origin,
        ZoneGrid grid,
        Affine toPage) {}
