package linewalk.samples.sheet;

import linewalk.samples.style.DraftingStyle;
import linewalk.samples.style.Zone;
import linewalk.samples.symbol.Spot;

/** Where a sheet's drawing units stand on the paper: origin in units from the frame's corner. */
public record Placement(DraftingStyle style, double shiftX, double shiftY) {
    private static final double MM = 72 / 25.4;

    public Spot pt(Spot units) {
        return new Spot(xPt(units.x()), yPt(units.y()));
    }

    double xPt(double units) {
        return style.grid().leftMm() * MM + (units + shiftX) * style.unitPt();
    }

    double yPt(double units) {
        return style.grid().topMm() * MM + (units + shiftY) * style.unitPt();
    }

    Zone zoneOf(Spot pt) {
        return style.grid().zoneAt(pt.x() / MM, pt.y() / MM);
    }

    static double pt(double mm) {
        return mm * MM;
    }
}
