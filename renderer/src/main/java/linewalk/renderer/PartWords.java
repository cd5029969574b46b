package linewalk.renderer;

import java.util.Map;
import java.util.Optional;
import linewalk.drawing.Component;
import linewalk.drawing.Enclosure;
import linewalk.drawing.Kind;
import linewalk.drawing.Part;
import linewalk.drawing.Position;

/** What stands beside a part's symbol. */
final class PartWords {

    private static final double MOST_PT = 118;

    private final PrintJob job;
    private final Words words;
    private final Doubts doubts;
    private final Stands stands;
    private final HeldEnergy energy;

    PartWords(PrintJob job, Doubts doubts, Stands stands, HeldEnergy energy) {
        this.job = job;
        this.words = new Words(job);
        this.doubts = doubts;
        this.stands = stands;
        this.energy = energy;
    }

    TextStack of(Component c) {
        TextStack text = new TextStack(MOST_PT);
        text.head(c.tag(), words.item(c.tag()).map(String::valueOf).orElse(null));
        if (c.kind() != Kind.TANK) {
            text.plain(words.description(c));
            String setting = words.setting(c);
            String expected = expected(c);
            text.plain(setting.isEmpty() || expected.isEmpty() ? setting + expected : setting + "; " + expected);
            state(c, text);
            text.plain(place(c));
            energy.caution(c).ifPresent(text::loud);
        }
        text.doubts(doubts.about(c.id()));
        return text;
    }

    private void state(Component c, TextStack text) {
        Position shift = stands.shift(c);
        Position now = stands.position(c);
        if (shift != null) {
            text.loud("SHIFT: " + String.join(" or ", shift.by()));
        } else if (now != null && !now.isRest() && c.positions().size() > 1) {
            text.plain("shifted: " + String.join(" or ", now.by()));
        } else if (job.step() != null && now != null && now.isRest() && isSwitched(c)) {
            text.plain("not shifted");
        }
        if (stands.isWayUnread(c)) {
            text.plain("way through not read");
        }
    }

    private static boolean isSwitched(Component c) {
        return c.kind() == Kind.DIRECTIONAL_VALVE || c.kind() == Kind.PROPORTIONAL_VALVE;
    }

    /** What a gauge at the part should show in this step, where the chart says so. */
    private String expected(Component c) {
        Part part = job.part(c.tag());
        String point = part == null ? null : part.testPoint();
        Map<String, Double> expected =
                job.step() == null ? Map.of() : job.step().said().pressuresBar();
        if (c.kind() == Kind.TEST_POINT || c.kind() == Kind.GAUGE) {
            return expected.containsKey(c.tag()) ? "expected " + bar(expected.get(c.tag())) : "";
        }
        if (point == null || point.isBlank()) {
            return "";
        }
        return "test at " + point + (expected.containsKey(point) ? ": " + bar(expected.get(point)) : "");
    }

    static String bar(double pressure) {
        return (pressure == Math.rint(pressure) ? String.valueOf((long) pressure) : String.valueOf(pressure)) + " bar";
    }

    private String place(Component c) {
        return enclosure(c).map(e -> "in " + e.tag() + ", ").orElse("") + words.address(c);
    }

    private Optional<Enclosure> enclosure(Component c) {
        return job.set().enclosures().stream()
                .filter(e ->
                        e.tag() != null && e.page().equals(c.page()) && e.box().contains(c.box()))
                .findFirst();
    }
}
