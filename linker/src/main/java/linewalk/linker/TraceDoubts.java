package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import linewalk.drawing.Component;
import linewalk.drawing.Finding;
import linewalk.drawing.Line;
import linewalk.drawing.Position;
import linewalk.drawing.Reference;
import linewalk.drawing.Rule;

/** What along a walk is not sure. */
final class TraceDoubts {

    private final Circuit circuit;

    TraceDoubts(Circuit circuit) {
        this.circuit = circuit;
    }

    /** In the order of the walk; {@code startGuessed} where it is not known that oil leaves by the first port. */
    List<Finding> of(List<Leg> legs, boolean startGuessed) {
        List<Finding> doubts = new ArrayList<>();
        for (Leg leg : legs) {
            Finding doubt = of(leg, leg == legs.get(0) && startGuessed);
            if (doubt != null) {
                doubts.add(doubt);
            }
        }
        return doubts;
    }

    Finding of(Leg leg, boolean startGuessed) {
        if (leg instanceof Leg.Along a) {
            return a.line().confidence() < Moves.SURE ? line(a) : null;
        } else if (leg instanceof Leg.Across x) {
            return Moves.mateConfidence(x.from(), x.to()) < Moves.SURE ? mate(x.from(), x.to()) : null;
        }
        Leg.Through t = (Leg.Through) leg;
        return startGuessed ? side(t) : unread(t);
    }

    private Finding line(Leg.Along a) {
        Line l = a.line();
        String name = l.label() == null ? "the line" : "line " + l.label();
        return new Finding(
                Rule.DOUBTFUL_JOIN,
                l.page(),
                a.from().place(),
                List.of(),
                List.of(),
                "What " + name + " joins on "
                        + circuit.set.address(l.page(), a.from().place()) + " was read with doubt ("
                        + percent(l.confidence()) + ").",
                "look at it on the drawing and confirm it with a join tag");
    }

    private Finding mate(Reference from, Reference to) {
        return new Finding(
                Rule.DOUBTFUL_JOIN,
                from.page(),
                from.place(),
                List.of(from.id(), to.id()),
                List.of(),
                "That " + circuit.address(from) + " goes on at " + circuit.address(to) + " is not sure ("
                        + percent(Moves.mateConfidence(from, to)) + ").",
                "look at both drawings and confirm it with a mate tag");
    }

    private Finding side(Leg.Through t) {
        return new Finding(
                Rule.DOUBTFUL_READING,
                t.component().page(),
                t.component().place(),
                List.of(),
                List.of(t.component().tag()),
                "Which port of " + t.component().tag() + " is its pressure side is not known.",
                "name the port in the question, or name its ports with port tags");
    }

    /** A switching valve that is passed although none of its positions is known. */
    private Finding unread(Leg.Through t) {
        boolean through = t.in() != null && t.out() != null;
        if (!through || !Passes.guessed(t.component())) {
            return null;
        }
        return new Finding(
                Rule.DOUBTFUL_READING,
                t.component().page(),
                t.component().place(),
                List.of(),
                List.of(t.component().tag()),
                "What " + t.component().tag() + " joins inside is not known; it has two ports and may be shut.",
                "tell its positions with position tags");
    }

    static Finding assumed(Component valve, MachineState state) {
        boolean unnamed = valve.positions().stream().anyMatch(Position::isUnnamed);
        String stands = "That " + valve.tag() + " stands " + state.words(valve);
        return new Finding(
                Rule.DOUBTFUL_READING,
                valve.page(),
                valve.place(),
                List.of(),
                List.of(valve.tag()),
                unnamed
                        ? stands + " is not known: a solenoid of it has no name that a cycle chart could mean."
                        : stands + " is taken from its solenoids; whether its pilot line is fed is not known.",
                unnamed
                        ? "tell its positions and what moves it with position tags"
                        : "look where its pilot line comes from and tell it with a tag");
    }

    static String percent(double confidence) {
        return String.format(Locale.ROOT, "%.0f %%", confidence * 100);
    }
}
