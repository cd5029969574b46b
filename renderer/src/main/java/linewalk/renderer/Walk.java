package linewalk.renderer;

import java.util.ArrayList;
import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Port;
import linewalk.linker.Leg;
import linewalk.renderer.iso.CylinderEnds;

/** The trace in sentences that can be read out beside the machine. */
final class Walk {

    private final PrintJob job;
    private final Words words;
    private final Doubts doubts;
    private final List<Leg> legs;
    private final List<String> sentences = new ArrayList<>();

    private Walk(PrintJob job, Doubts doubts) {
        this.job = job;
        words = new Words(job);
        this.doubts = doubts;
        legs = job.subject().legs();
    }

    /** A crossing belongs to the line that leads to it; the start to the line that leads away. */
    static List<String> sentences(PrintJob job) {
        Walk walk = new Walk(job, Doubts.of(job));
        int i = 0;
        while (i < walk.legs.size()) {
            i = walk.take(i);
        }
        return List.copyOf(walk.sentences);
    }

    private int take(int i) {
        Leg leg = legs.get(i);
        if (leg instanceof Leg.Through through) {
            if (through.in() == null && at(i + 1) instanceof Leg.Along along) {
                return along("From " + words.placed(through.component()) + port(through) + " along ", along, i + 1);
            }
            sentences.add(Words.sentence(through(through), doubts.mention(i)));
            return i + 1;
        }
        if (leg instanceof Leg.Along along) {
            return along("Along ", along, i);
        }
        Leg.Across across = (Leg.Across) leg;
        sentences.add(Words.sentence("From ", reference(across), ", ", goesOn(across), doubts.mention(i)));
        return i + 1;
    }

    private static String port(Leg.Through start) {
        return start.out() == null || start.out().name() == null
                ? ""
                : ", port " + start.out().name() + ",";
    }

    private int along(String lead, Leg.Along along, int i) {
        String text = lead + Words.called(along.line(), number(along, i));
        String course = along.line().runs().isEmpty() ? " (joined by hand; its course is not drawn)" : "";
        if (at(i + 1) instanceof Leg.Across across) {
            sentences.add(Words.sentence(
                    text,
                    course,
                    " to ",
                    reference(across),
                    doubts.mention(i),
                    "; ",
                    goesOn(across),
                    doubts.mention(i + 1)));
            return i + 2;
        }
        String to = at(i + 1) instanceof Leg.Through next
                ? " to " + words.called(next.component())
                : "; the walk stops there, " + address(along);
        sentences.add(Words.sentence(text, course, to, doubts.mention(i)));
        return i + 1;
    }

    /** Beside a crossing it is the one that stands there. */
    private String number(Leg.Along along, int i) {
        if (at(i + 1) instanceof Leg.Across next && next.from().label() != null) {
            return next.from().label();
        }
        if (i > 0 && at(i - 1) instanceof Leg.Across before && before.to().label() != null) {
            return before.to().label();
        }
        return words.number(along.line());
    }

    private String address(Leg.Along along) {
        return job.set().address(along.line().page(), along.to().place());
    }

    private Leg at(int i) {
        return i < legs.size() ? legs.get(i) : null;
    }

    private String reference(Leg.Across across) {
        return "reference " + across.from().text() + " on " + words.address(across.from());
    }

    private String goesOn(Leg.Across across) {
        return "goes on at " + words.address(across.to()) + " (reference "
                + across.to().text() + ")";
    }

    private String through(Leg.Through leg) {
        if (leg.out() == null) {
            return "Ends at " + words.placed(leg.component());
        }
        if (leg.in() == null) {
            return "Starts at " + words.placed(leg.component());
        }
        String setting = words.setting(leg.component());
        String shift = leg.shift() == null ? "" : "; " + words.shift(leg.component(), leg.shift());
        if (leg.component().kind().isActuator()) {
            return "Moves " + words.placed(leg.component()) + ": oil in at "
                    + name(leg.component(), leg.in(), "one port") + ", the other side's oil out at "
                    + name(leg.component(), leg.out(), "the other port") + shift;
        }
        return "Through " + words.placed(leg.component()) + Words.ports(leg) + (setting.isEmpty() ? "" : ", " + setting)
                + Words.opening(leg.passage())
                + (Words.isWayUnread(leg) ? "; which way it lets oil through was not read" : "")
                + shift;
    }

    private static String name(Component c, Port port, String unnamed) {
        String name = port.name() == null ? unnamed : port.name();
        return switch (CylinderEnds.of(c, port.id())) {
            case ROD -> name + " (rod side)";
            case CAP -> name + " (cap side)";
            case UNTOLD -> name;
        };
    }
}
