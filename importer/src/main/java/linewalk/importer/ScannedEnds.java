package linewalk.importer;

import java.util.HashSet;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Set;
import linewalk.drawing.Affine;
import linewalk.drawing.Box;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.ReferenceReading;
import linewalk.drawing.SheetReading;
import linewalk.drawing.Zone;
import linewalk.drawing.ZoneGrid;

/** How sure a scan's lines are by what they end in: they prove right less often than those of vector pages. */
record ScannedEnds(SheetReading reading) {

    private static final double DOUBTFUL = 0.75;

    /** Every end was understood. */
    private static final double SURE = 0.92;

    private static final double REFERENCE_SURE = 0.9;

    /** Readings this likely against the first are as good. */
    private static final double AS_LIKELY = 0.8;

    /** The least margin of a sheet outside its grid, in widths of a band. */
    private static final double EDGE = 0.05;

    private static final int LETTERS = 10_000;

    /** How far off a part's box its ports may lie, in its shorter sides. */
    private static final double RIM = 0.1;

    /** The most that may be told, 0 to 1. */
    double confidence(Line l) {
        return understood(l) ? SURE : DOUBTFUL;
    }

    /** It ends in no more than one place of each part, at ports that were made out, and nowhere in the open. */
    private boolean understood(Line l) {
        Set<String> parts = new HashSet<>();
        for (End e : l.ends()) {
            boolean good = e instanceof End.AtPort p && parts.add(p.component()) && known(p)
                    || e instanceof End.AtReference f && read(f);
            if (!good) {
                return false;
            }
        }
        return l.ends().size() > 1;
    }

    /** Read well, and its zone is one that sheets of this set have: they are divided alike, but for a few. */
    private boolean read(End.AtReference at) {
        ReferenceReading f = reading.references().stream()
                .filter(x -> x.id().equals(at.reference()))
                .findFirst()
                .orElseThrow();
        double likely = f.readings().isEmpty() ? 0 : f.readings().get(0).likelihood() * AS_LIKELY;
        // which of several it is, the set decides
        boolean zoned = reading.grid() == null
                || f.readings().isEmpty()
                || f.readings().stream().filter(r -> r.likelihood() >= likely).anyMatch(r -> r.targets().stream()
                        .allMatch(t -> t.zone() == null || onGrid(t.zone())));
        return zoned && f.confidence() >= REFERENCE_SURE;
    }

    /** Of a grid whose outer labels were not read, the rest of the page may hold more. */
    private boolean onGrid(Zone zone) {
        ZoneGrid grid = reading.grid();
        Affine toGrid = grid.toGrid();
        Box page = toGrid.apply(new Box(0, 0, reading.widthPt(), reading.heightPt()));
        return grid.has(zone)
                || (goesOn(grid.columns(), zone.digits(), page.x0Pt(), page.x1Pt())
                                || goesOn(grid.columns(), zone.letters(), page.x0Pt(), page.x1Pt()))
                        && (goesOn(grid.rows(), zone.letters(), page.y0Pt(), page.y1Pt())
                                || goesOn(grid.rows(), zone.digits(), page.y0Pt(), page.y1Pt()));
    }

    /** The label is one of these bands, or of those for which there is room on the page before and after them. */
    private static boolean goesOn(List<ZoneGrid.Band> bands, String label, double fromPt, double toPt) {
        IntSummaryStatistics of = bands.stream().mapToInt(b -> rank(b.label())).summaryStatistics();
        double first = bands.get(0).fromPt();
        double last = bands.get(bands.size() - 1).toPt();
        double pitch = (last - first) / bands.size();
        int room = (int) ((first - fromPt) / pitch - EDGE) + (int) ((toPt - last) / pitch - EDGE);
        boolean series = of.getMin() > 0 && of.getMax() - of.getMin() < bands.size() + 2;
        return series && rank(label) >= of.getMin() - room && rank(label) <= of.getMax() + room;
    }

    /** Where a label stands in its series: numbers from 1, letters far behind them; 0 for what is in none. */
    private static int rank(String label) {
        if (label.matches("[0-9]{1,3}")) {
            return Integer.parseInt(label);
        }
        return label.matches("[A-Z]") ? LETTERS + label.charAt(0) : 0;
    }

    /** At the part's outline, and the port has its letter beside it, or the symbol was made out. */
    private boolean known(End.AtPort at) {
        Component c = reading.components().stream()
                .filter(x -> x.id().equals(at.component()))
                .findFirst()
                .orElseThrow();
        double rim = RIM * Math.min(c.box().widthPt(), c.box().heightPt());
        if (!c.box().grow(rim).contains(at.place())) {
            return false;
        }
        boolean lettered = c.ports().stream().anyMatch(p -> p.id().equals(at.port()) && p.name() != null);
        return lettered || c.kind() != Kind.UNKNOWN;
    }
}
