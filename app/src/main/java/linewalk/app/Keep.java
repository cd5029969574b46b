package linewalk.app;

import linewalk.drawing.DrawingSet;
import linewalk.drawing.Finding;
import linewalk.drawing.HandTag;
import linewalk.drawing.UserError;

/** The tag that keeps a finding. */
final class Keep {

    private Keep() {}

    /** @throws UserError where no finding is called so */
    static HandTag tag(DrawingSet set, String id, String reason) {
        Finding f = set.findings().stream()
                .filter(x -> x.id().equals(id))
                .findFirst()
                .orElseThrow(() ->
                        new UserError("no finding is called " + id + "; check lists them with their ids in brackets"));
        return new HandTag.OfKept(
                f.page() == null ? null : f.page().source(),
                f.page() == null ? null : f.page().page(),
                f.place() == null ? null : f.place().xPt(),
                f.place() == null ? null : f.place().yPt(),
                f.rule().word(),
                f.id(),
                reason);
    }
}
