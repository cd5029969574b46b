package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.CycleChart;
import linewalk.drawing.Finding;
import linewalk.drawing.HandTag;
import linewalk.drawing.Part;

/** All checks over a linked set, each fault once. */
final class Checks {

    private Checks() {}

    static List<Finding> of(
            List<PageDraft> pages,
            RefIndex index,
            Mates mates,
            List<HandTag> tags,
            List<Part> parts,
            CycleChart chart) {
        List<Finding> findings = new ArrayList<>();
        SheetCheck.check(pages, findings);
        SamePlaceCheck samePlace = new SamePlaceCheck(index, mates);
        samePlace.check(findings);
        LooseEnds loose = new LooseEnds(pages);
        new TargetCheck(index, mates, loose).check(findings);
        MateLines lines = new MateLines(pages);
        new PairCheck(index, mates, lines).check(findings);
        lines.check(mates, findings);
        new FarPart(pages).check(index, mates, lines, findings);
        new PartsCheck(pages, parts).check(findings);
        DrainCheck.check(pages, mates, lines, findings);
        loose.check(findings);
        LoopCheck.check(pages, mates, findings);
        SolenoidCheck.check(pages, chart, findings);
        new PageDoubts(pages, index, tags).check(findings);
        DoubtfulMates.check(mates, findings);
        return findings;
    }
}
