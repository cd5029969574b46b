package linewalk.linker;

import java.util.List;
import linewalk.drawing.Component;
import linewalk.drawing.Port;

/**
 * A question with its words resolved.
 *
 * @param from drawings of the part that the trace starts from
 * @param leaving the ports by which oil may leave it
 * @param leavingGuessed it is not known that oil leaves there
 * @param via plain designations to pass, in order
 * @param to drawings of the part that the trace ends at
 * @param entering the one port to end at, or null for any
 */
record Route(
        List<Component> from,
        List<Port> leaving,
        boolean leavingGuessed,
        List<String> via,
        List<Component> to,
        String entering) {

    boolean endsAt(Circuit.PortAt at) {
        return to.contains(at.component())
                && (entering == null || entering.equalsIgnoreCase(at.port().name()));
    }

    /** How many of via are passed after this component, when so many were before. */
    int after(int passed, Component c) {
        return passed < via.size() && via.get(passed).equals(Names.plain(c.tag())) ? passed + 1 : passed;
    }
}
