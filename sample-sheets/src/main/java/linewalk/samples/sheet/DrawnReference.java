package linewalk.samples.sheet;

import java.util.List;
import linewalk.samples.machine.Flow;
import linewalk.samples.machine.Reference;
import linewalk.samples.style.Zone;
import linewalk.samples.symbol.Spot;

/**
 * A reference as printed. {@code targets} are as printed, errors included; {@code zone} holds the printed text;
 * {@code point} is the text's middle, at a match letter the circle's;
 * {@code mates} are the ids of the true other ends.
 */
public record DrawnReference(
        Reference reference,
        int page,
        Box textBox,
        Spot point,
        Zone zone,
        String text,
        List<Target> targets,
        List<Target> trueTargets,
        Flow flow,
        double endXPt,
        double endYPt,
        boolean turned,
        String form,
        List<String> mates) {
    DrawnReference drawnAt(Box box, Spot middle) {
        return new DrawnReference(
                reference,
                page,
                box,
                middle,
                zone,
                text,
                targets,
                trueTargets,
                flow,
                endXPt,
                endYPt,
                turned,
                form,
                mates);
    }

    /** {@code zone} is null at a match letter. */
    public record Target(String sheet, String zone) {}
}
