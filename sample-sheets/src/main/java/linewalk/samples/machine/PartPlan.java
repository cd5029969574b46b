package linewalk.samples.machine;

import linewalk.samples.symbol.Place;
import linewalk.samples.symbol.Spot;
import linewalk.samples.symbol.Symbol;

/** A part being described; {@link #add} puts it on the sheet. */
final class PartPlan {
    private final SheetPlan sheet;
    private final String tag;
    private final String description;
    private final Symbol symbol;
    private Place place;
    private Words setting;
    private String testPoint = "";
    private Spot tagAt;

    PartPlan(SheetPlan sheet, String tag, String description, Symbol symbol, Place place) {
        this.sheet = sheet;
        this.tag = tag;
        this.description = description;
        this.symbol = symbol;
        this.place = place;
    }

    PartPlan turned(int quarters) {
        place = new Place(place.x(), place.y(), quarters, place.mirrored());
        return this;
    }

    PartPlan mirrored() {
        place = new Place(place.x(), place.y(), place.quarters(), true);
        return this;
    }

    PartPlan set(String metric, String us) {
        setting = new Words(metric, us);
        return this;
    }

    PartPlan set(String same) {
        return set(same, same);
    }

    PartPlan test(String point) {
        testPoint = point;
        return this;
    }

    /** Texts start here, from the part's centre. */
    PartPlan text(double dx, double dy) {
        tagAt = new Spot(place.x() + dx, place.y() + dy);
        return this;
    }

    void add() {
        Spot at = tagAt != null ? tagAt : usualText();
        sheet.add(new Part(tag, description, symbol, place, setting, testPoint, at));
    }

    /** Above a spool, above a part in a level line, to the right of the others. */
    private Spot usualText() {
        Spot half = symbol.half();
        if (symbol.kind().equals("directional-valve")) {
            return new Spot(place.x() - 1.75, place.y() - 0.92 - settingRoom());
        }
        if (place.quarters() % 2 == 1) {
            return new Spot(place.x() - half.y(), place.y() - half.x() - 0.4 - settingRoom());
        }
        return new Spot(place.x() + half.x() + 0.25, place.y() - settingRoom() / 2);
    }

    private double settingRoom() {
        return setting == null ? 0 : 0.45;
    }
}
