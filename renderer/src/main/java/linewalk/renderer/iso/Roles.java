package linewalk.renderer.iso;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import linewalk.drawing.Kind;
import linewalk.drawing.LineKind;

/**
 * What the ports of a part are for. Names come first (ISO 9461), then the passages, then the lines; where only two ports
 * can be working ports they are, whatever lines meet them.
 */
final class Roles {

    private static final Pattern PILOT = Pattern.compile("(?i)(X|Z|PP|ST)\\d?");
    private static final Pattern DRAIN = Pattern.compile("(?i)(Y|L|DR)\\d?");
    private static final Pattern GAUGE = Pattern.compile("(?i)(M|MP|G)\\d?");

    private static final Set<Kind> OPENED =
            EnumSet.of(Kind.PILOT_CHECK_VALVE, Kind.PREFILL_VALVE, Kind.DECOMPRESSION_VALVE, Kind.COUNTERBALANCE_VALVE);

    private final Drafting d;
    private final Set<String> passed;
    private final boolean few;

    Roles(Drafting d) {
        this.d = d;
        passed = d.passages().flatMap(x -> Stream.of(x.from(), x.to())).collect(Collectors.toSet());
        long plain = Stream.concat(
                        d.part().ports().stream()
                                .filter(p -> !isAside(p.name()))
                                .map(p -> p.id()),
                        d.uses().stream().filter(u -> !isAside(u.name())).map(PortUse::id))
                .distinct()
                .count();
        few = plain <= 2;
    }

    static boolean isPilot(String name) {
        return name != null && PILOT.matcher(name.strip()).matches();
    }

    static boolean isDrain(String name) {
        return name != null && DRAIN.matcher(name.strip()).matches();
    }

    static boolean isGauge(String name) {
        return name != null && GAUGE.matcher(name.strip()).matches();
    }

    static boolean isAside(String name) {
        return isPilot(name) || isDrain(name) || isGauge(name);
    }

    /** The two that oil runs between, where the passages name just two; else all working ports. */
    List<PortUse> through() {
        List<PortUse> two =
                d.uses().stream().filter(u -> passed.contains(u.id())).toList();
        return passed.size() == 2 && two.size() == 2 ? two : working();
    }

    List<PortUse> working() {
        return d.uses().stream().filter(this::isWorking).toList();
    }

    List<PortUse> pilots() {
        return d.uses().stream().filter(this::isPilot).toList();
    }

    List<PortUse> drains() {
        return d.uses().stream()
                .filter(u -> !isWorking(u) && !isPilot(u) && !isGauge(u.name()))
                .toList();
    }

    List<PortUse> gauges() {
        return d.uses().stream().filter(u -> isGauge(u.name())).toList();
    }

    private boolean isWorking(PortUse u) {
        return !isAside(u.name())
                && !opens(u)
                && (passed.contains(u.id()) || few || u.kind() == null || u.kind() == LineKind.WORKING);
    }

    private boolean isPilot(PortUse u) {
        return isPilot(u.name()) || !isAside(u.name()) && !isWorking(u) && (u.kind() == LineKind.PILOT || opens(u));
    }

    /** Of a valve that its pilot opens: what oil does not run through is where that comes in, whatever line brings it. */
    private boolean opens(PortUse u) {
        return OPENED.contains(d.part().kind())
                && passed.size() == 2
                && !passed.contains(u.id())
                && u.kind() != LineKind.DRAIN;
    }
}
