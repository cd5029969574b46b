package linewalk.renderer;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Line;
import linewalk.drawing.LineKind;
import linewalk.drawing.Part;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.linker.Leg;
import linewalk.linker.Question;
import linewalk.linker.Trace;

/** How things are called on a print. */
final class Words {

    private final PrintJob job;
    /** Made when a line is first named. */
    private SetIndex index;

    Words(PrintJob job) {
        this.job = job;
    }

    /** "check valve 0V1". */
    String called(Component c) {
        String kind = c.kind() == Kind.UNKNOWN ? "part" : plain(c.kind());
        return c.tag().equalsIgnoreCase(kind) ? c.tag() : kind + " " + c.tag();
    }

    /** "check valve 0V1 (item 2; sheet 1, F5)". */
    String placed(Component c) {
        return called(c) + " (" + item(c.tag()).map(n -> "item " + n + "; ").orElse("") + address(c) + ")";
    }

    Optional<Integer> item(String tag) {
        return Optional.ofNullable(job.facts().itemNumbers().get(tag));
    }

    /** The number in a balloon; a dash where the set has given none. */
    String balloon(Component c) {
        return item(c.tag()).map(String::valueOf).orElse("-");
    }

    String address(Component c) {
        return job.set().address(c.page(), c.place());
    }

    String address(linewalk.drawing.PageKey page, linewalk.drawing.Point place) {
        return job.set().address(page, place);
    }

    String address(Reference r) {
        String sheet = "sheet " + job.set().getSheet(r.page()).name();
        return r.zone() == null ? sheet : sheet + ", " + r.zone();
    }

    /** "sheet 1, B4 → sheet 2, E1". */
    String crossing(Reference from, Reference to) {
        return address(from) + " \u2192 " + address(to);
    }

    /** The parts list's words, else the kind. */
    String description(Component c) {
        Part part = job.part(c.tag());
        if (part != null && part.description() != null) {
            return part.description();
        }
        return c.kind() == Kind.UNKNOWN ? "kind not known" : capital(plain(c.kind()));
    }

    /** As drawn, with the parts list's where it says something else; empty where neither says. */
    String setting(Component c) {
        Part part = job.part(c.tag());
        String listed = part == null ? null : part.setting();
        if (c.setting() == null) {
            return listed == null ? "" : listed;
        }
        if (listed != null && squeezed(listed).contains(squeezed(c.setting()))) {
            return listed;
        }
        if (listed == null || squeezed(c.setting()).contains(squeezed(listed))) {
            return c.setting();
        }
        return "drawn " + c.setting() + ", parts list " + listed;
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "").toLowerCase(java.util.Locale.ROOT);
    }

    /** Null where it has none of its own. */
    String number(Line line) {
        index = index == null ? new SetIndex(job.set()) : index;
        return index.number(line);
    }

    /** "line L-120 (25x2.5)". */
    String called(Line line) {
        return called(line, number(line));
    }

    /** @param number null where it has none */
    static String called(Line line, String number) {
        String kind =
                line.kind() == LineKind.WORKING ? "" : line.kind().name().toLowerCase(java.util.Locale.ROOT) + " ";
        String size = line.size() == null ? "" : " (" + line.size() + ")";
        return number == null ? "an unnumbered " + kind + "line" + size : kind + "line " + number + size;
    }

    /** " from P to A", or empty where the ports have no letters. */
    static String ports(Leg.Through leg) {
        String in = name(leg.in());
        String out = name(leg.out());
        return in == null || out == null || in.equalsIgnoreCase(out) ? "" : " from " + in + " to " + out;
    }

    private static String name(Port port) {
        return port == null ? null : port.name();
    }

    /** "Directional valve 1V1 must be shifted by solenoid Y1A". */
    String shift(Component c, Position to) {
        if (to.isRest()) {
            return capital(called(c)) + " must be back at rest";
        }
        String how = to.how() == null ? "" : to.how().name().toLowerCase(java.util.Locale.ROOT) + " ";
        return capital(called(c)) + " must be shifted by " + how + String.join(" or ", to.by());
    }

    /** "open only when pushed open by pressure", or empty. */
    static String opening(Passage passage) {
        if (passage == null) {
            return "";
        }
        if (passage.opens() != null) {
            return passage.opens() == Passage.Opens.PRESSURE
                    ? "; it opens only under pressure"
                    : "; it opens only by its pilot";
        }
        return passage.throttled() ? "; throttled this way" : "";
    }

    /** Oil is taken to pass a part that lets it through one way only, and the drawing's way was not read. */
    static boolean isWayUnread(Leg.Through leg) {
        if (leg.in() == null || leg.out() == null || leg.passage() != null) {
            return false;
        }
        return switch (leg.component().kind()) {
            case CHECK_VALVE,
                    PILOT_CHECK_VALVE,
                    PREFILL_VALVE,
                    RELIEF_VALVE,
                    SEQUENCE_VALVE,
                    UNLOADING_VALVE,
                    REDUCING_VALVE,
                    COUNTERBALANCE_VALVE -> true;
            default -> false;
        };
    }

    static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private static String plain(Kind kind) {
        return kind.word().replace('-', ' ');
    }

    /** "from 0P1 by way of 1A1 to TANK". */
    static String route(Question q) {
        List<String> via = q.via();
        return q.from() + (via.isEmpty() ? "" : " via " + String.join(", ", via)) + " to "
                + (q.to() == null ? "the tank" : q.to());
    }

    /** The last leg goes into a part and not out of it again. */
    static boolean arrives(Trace trace) {
        List<Leg> legs = trace.legs();
        return !legs.isEmpty() && legs.get(legs.size() - 1) instanceof Leg.Through t && t.out() == null;
    }

    String condition() {
        if (job.step() != null) {
            String name = job.step().name() == null ? "" : " " + job.step().name();
            String on = job.step().energised().stream().sorted().collect(Collectors.joining(", "));
            return "Step " + job.step().number() + name + "; energised: " + (on.isEmpty() ? "none" : on);
        }
        return job.subject().isPath() && job.trace().question().anyPosition()
                ? "Any position: see what must shift"
                : "At rest, as drawn";
    }

    static String sentence(String... parts) {
        return Arrays.stream(parts).collect(Collectors.joining()) + ".";
    }
}
