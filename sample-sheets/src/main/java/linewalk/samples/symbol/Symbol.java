package linewalk.samples.symbol;

import java.util.List;
import java.util.Map;

/** A drawn symbol after ISO 1219-1, in units, centred on its place, flow upwards. */
public interface Symbol {
    /** The kind in the words of the export. */
    String kind();

    /** Port names and where a line meets the outline. */
    Map<String, Spot> ports();

    void draw(Ink ink);

    /** Half the width and half the height of the outline. */
    Spot half();

    /** Port letters printed beside the symbol and their places; none for parts with two like ports. */
    default Map<String, Spot> letters() {
        return Map.of();
    }

    /** What the part joins inside, position by position; empty where two ports need no telling. */
    default List<SpoolPosition> positions() {
        return List.of();
    }
}
