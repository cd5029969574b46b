package linewalk.samples.machine;

import linewalk.samples.symbol.Place;
import linewalk.samples.symbol.Spot;
import linewalk.samples.symbol.Symbol;

/** A part where it is drawn. {@code setting} may be null; {@code tagAt} is where its texts start, left-aligned. */
public record Part(
        String tag, String description, Symbol symbol, Place place, Words setting, String testPoint, Spot tagAt) {
    /** Where a line meets the port; fails on a name the symbol does not have. */
    public Spot port(String name) {
        Spot local = symbol.ports().get(name);
        if (local == null) {
            throw new IllegalArgumentException(tag + " has no port " + name);
        }
        return place.of(local);
    }
}
