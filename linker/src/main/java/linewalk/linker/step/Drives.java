package linewalk.linker.step;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.Component;
import linewalk.drawing.Kind;
import linewalk.drawing.PageKey;

/** Which motor drives a pump: the one of the same number (P1 and M1, 0P1 and 0M1), else the nearest on the sheet. */
final class Drives {

    private final Map<String, Component> byTag = new HashMap<>();
    private final Map<PageKey, List<Component>> byPage = new HashMap<>();

    Drives(Net net) {
        for (Part p : net.parts) {
            if (p.kind() == Kind.ELECTRIC_MOTOR) {
                byTag.put(Words.plain(p.component().tag()), p.component());
                byPage.computeIfAbsent(p.component().page(), k -> new ArrayList<>())
                        .add(p.component());
            }
        }
    }

    /** Its plain designation, or null. */
    String motorOf(Component pump) {
        String same = Words.plain(pump.tag()).replaceFirst("P(?=\\d*$)", "M");
        if (byTag.containsKey(same)) {
            return same;
        }
        return byPage.getOrDefault(pump.page(), List.of()).stream()
                .min((a, b) -> Double.compare(
                        a.place().distancePt(pump.place()), b.place().distancePt(pump.place())))
                .map(m -> Words.plain(m.tag()))
                .orElse(null);
    }
}
