package linewalk.samples.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The invented machine: a harbour ferry link-span with end flap and mooring winch. */
public final class LinkSpan {
    private LinkSpan() {}

    public static Machine describe() {
        return machine(sheets(false), Cycle.states(), Journeys.all());
    }

    /** The same machine with one sheet more: a dense manifold of 25 valves for barriers, latches and fenders. */
    public static Machine describeWithDeckGear() {
        List<SheetPlan> sheets = new ArrayList<>(sheets(true));
        sheets.add(DeckGear.manifold(14));
        List<Journey> journeys = new ArrayList<>(Journeys.all());
        journeys.addAll(DeckGear.journeys());
        return machine(List.copyOf(sheets), DeckGear.states(Cycle.states()), List.copyOf(journeys));
    }

    private static List<SheetPlan> sheets(boolean deckGear) {
        return List.of(
                PowerUnit.reservoirAndPumps(1, deckGear),
                PowerUnit.filtersAndReliefs(2, deckGear),
                PowerUnit.returnAndCooler(3, deckGear),
                TestPanel.accumulatorAndTestPanel(4),
                ValveHouse.hoist(5),
                ValveHouse.pinsAndFlap(6),
                ValveHouse.winch(7),
                Gantry.trench(8),
                Gantry.hoistPort(9),
                Gantry.hoistStarboard(10),
                SpanAndQuay.lockPins(11),
                SpanAndQuay.endFlap(12),
                SpanAndQuay.winchAndBrake(13));
    }

    private static Machine machine(List<SheetPlan> sheets, List<State> states, List<Journey> journeys) {
        return new Machine(
                "FERRY LINK-SPAN, BERTH 2 - HYDRAULIC INSTALLATION",
                "FLS-2210-H",
                sheets,
                states,
                journeys,
                Cycle.misprints(),
                lineSizes());
    }

    private static Map<String, Words> lineSizes() {
        Words large = new Words("38x4", "1-1/2");
        Words middle = new Words("25x3", "1");
        Words small = new Words("16x2", "5/8");
        return Map.of(
                "101",
                large,
                "102",
                middle,
                "110",
                large,
                "131",
                large,
                "132",
                large,
                "135",
                new Words("60x3", "2-1/2"),
                "134",
                middle,
                "158",
                small,
                "162",
                small,
                "142",
                new Words("30x3", "1-1/4"));
    }
}
