package linewalk.drawing;

import java.util.List;

/**
 * An off-page connector reference, linked.
 *
 * @param zone the zone it stands in, or null where its sheet has no grid
 * @param targets one, or several for a header that goes on to several sheets
 * @param label the line number, name or letter that goes with it, or null
 * @param mates ids of the other ends, best first; empty where none was found
 * @param mateConfidence of the least sure mate; 0 without mates
 */
public record Reference(
        String id,
        PageKey page,
        Point place,
        Box box,
        Zone zone,
        String text,
        List<Target> targets,
        String label,
        Flow flow,
        Origin origin,
        double confidence,
        List<String> mates,
        double mateConfidence) {

    public Reference {
        targets = List.copyOf(targets);
        mates = List.copyOf(mates);
    }
}
