package linewalk.renderer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import linewalk.drawing.Point;
import linewalk.drawing.Reference;
import linewalk.linker.Leg;

/** Where doubts stand on the original under a cutting. */
final class CuttingDoubts {

    /**
     * One place of a doubt.
     *
     * @param reference whose lettering the mark keeps free, or null
     */
    record Spot(Doubts.Doubt doubt, Point place, Reference reference) {}

    private final PrintJob job;
    private final Doubts doubts;

    CuttingDoubts(PrintJob job, Doubts doubts) {
        this.job = job;
        this.doubts = doubts;
    }

    List<Spot> on(Panel p) {
        Stay stay = p.view().stay;
        List<Spot> spots = new ArrayList<>();
        if (job.subject().isPath()) {
            for (int leg = Math.max(0, stay.firstLeg() - 1); leg <= stay.lastLeg(); leg++) {
                doubts.at(leg).forEach(d -> ofPath(stay, d).ifPresent(spots::add));
            }
        } else {
            doubts.all().forEach(d -> spots.addAll(ofCircuit(p.view(), d)));
        }
        return spots.stream().filter(s -> p.shows(p.view().map(s.place()))).toList();
    }

    /** At every reference that it is about; else at its own place, else at what it is about. */
    private static List<Spot> ofCircuit(BrokenView view, Doubts.Doubt d) {
        Stay stay = view.stay;
        List<Spot> named = stay.references().stream()
                .filter(r -> d.about().contains(r.id()))
                .distinct()
                .map(r -> new Spot(d, r.place(), r))
                .toList();
        if (!named.isEmpty()) {
            return named;
        }
        if (stay.page().equals(d.page()) && d.place() != null && view.seen(d.place())) {
            return List.of(new Spot(d, d.place(), null));
        }
        return stay.parts().stream()
                .filter(t -> d.about().contains(t.component().id()))
                .map(t -> new Spot(d, Stay.anchor(t).center(), null))
                .distinct()
                .toList();
    }

    /** Its own place, else the reference, part or line that it is tied to. */
    private Optional<Spot> ofPath(Stay stay, Doubts.Doubt d) {
        Leg leg = job.subject().legs().get(d.leg());
        if (leg instanceof Leg.Across x) {
            Reference r = d.leg() < stay.firstLeg() ? x.to() : x.from();
            return Optional.of(new Spot(d, r.place(), r));
        }
        if (d.leg() < stay.firstLeg() || d.leg() >= stay.lastLeg()) {
            return Optional.empty();
        }
        if (stay.page().equals(d.page()) && d.place() != null) {
            return Optional.of(new Spot(d, d.place(), null));
        }
        Point tied = leg instanceof Leg.Along a
                ? a.from().place()
                : ((Leg.Through) leg).component().place();
        return Optional.of(new Spot(d, tied, null));
    }
}
