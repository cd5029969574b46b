package linewalk.linker.step;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.Port;

/**
 * A component with the volume at each of its ports.
 *
 * @param volumes in the order of the component's ports
 * @param lined whether a line was read there
 * @param main whether it is not on drain lines alone
 */
record Part(int index, Component component, int[] volumes, boolean[] lined, boolean[] main) {

    static Part of(int index, Component c, Volumes v) {
        int[] volumes = new int[c.ports().size()];
        boolean[] lined = new boolean[volumes.length];
        boolean[] main = new boolean[volumes.length];
        for (int i = 0; i < volumes.length; i++) {
            volumes[i] = v.ofPort(c.ports().get(i));
            lined[i] = v.lined(c.ports().get(i));
            main[i] = !lined[i] || v.offDrain(c.ports().get(i));
        }
        return new Part(index, c, volumes, lined, main);
    }

    Kind kind() {
        return component.kind();
    }

    boolean working(int port) {
        return !Words.aside(component.ports().get(port));
    }

    /** Volumes at which a line meets a working port; each once. */
    List<Integer> workingVolumes() {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < volumes.length; i++) {
            if (working(i) && main[i] && lined[i] && !found.contains(volumes[i])) {
                found.add(volumes[i]);
            }
        }
        return found;
    }

    /** Where working oil passes: of two ports both, whatever lines they are on; of more none that is on drain lines alone. */
    int[] through() {
        int[] named = IntStream.range(0, volumes.length).filter(this::working).toArray();
        return IntStream.of(named)
                .filter(i -> named.length <= 2 || main[i])
                .map(i -> volumes[i])
                .toArray();
    }

    /** The volume at a port, or -1. */
    int at(String portId) {
        List<Port> ports = component.ports();
        for (int i = 0; i < ports.size(); i++) {
            if (ports.get(i).id().equals(portId)) {
                return volumes[i];
            }
        }
        return -1;
    }

    /** By name as written, else whatever the case; -1 where there is none. */
    int named(String name) {
        List<Port> ports = component.ports();
        int loose = -1;
        for (int i = 0; i < ports.size(); i++) {
            if (name.equals(ports.get(i).name())) {
                return volumes[i];
            }
            if (name.equalsIgnoreCase(ports.get(i).name())) {
                loose = volumes[i];
            }
        }
        return loose;
    }
}
