package linewalk.renderer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Line;
import linewalk.drawing.Reference;

/** Where branches that leave a print lead: the parts at their ends, over all sheets. */
final class Beyond {

    /**
     * One end.
     *
     * @param reference id of the one that has no mate; else null
     * @param caution what to beware of there, or null
     */
    record Away(String words, String reference, String caution) {
        static Away at(String words) {
            return new Away(words, null, null);
        }
    }

    private final SetIndex index;
    private final Words words;
    private final HeldEnergy energy;
    private final Set<String> lines = new HashSet<>();
    private final Set<Away> told = new HashSet<>();
    private final List<Away> ends = new ArrayList<>();

    private Beyond(SetIndex index, Words words, HeldEnergy energy) {
        this.index = index;
        this.words = words;
        this.energy = energy;
    }

    /**
     * Each end in words: designation, port, setting and address.
     *
     * @param shown ends that the print shows itself
     */
    static List<Away> of(Line line, SetIndex index, Words words, HeldEnergy energy, Predicate<End> shown) {
        Beyond beyond = new Beyond(index, words, energy);
        beyond.follow(line, shown);
        return beyond.ends;
    }

    /** Where a reference leads. */
    static List<Away> of(Reference from, SetIndex index, Words words, HeldEnergy energy, Predicate<End> shown) {
        Beyond beyond = new Beyond(index, words, energy);
        beyond.across(from, shown);
        return beyond.ends;
    }

    private void follow(Line line, Predicate<End> shown) {
        if (!lines.add(line.id())) {
            return;
        }
        for (End e : line.ends()) {
            if (shown.test(e)) {
                continue;
            }
            if (e instanceof End.AtPort p && index.part(p.component()) != null) {
                tell(part(index.part(p.component()), p.port()));
            } else if (e instanceof End.AtReference r && index.reference(r.reference()) != null) {
                across(index.reference(r.reference()), shown);
            } else {
                tell(Away.at("open end, " + words.address(line.page(), e.place())));
            }
        }
    }

    private void across(Reference from, Predicate<End> shown) {
        if (from.mates().isEmpty()) {
            tell(new Away(
                    "reference " + from.text() + ", " + words.address(from) + ": no mate found", from.id(), null));
            return;
        }
        for (String mate : from.mates()) {
            for (Line next : index.atReference(mate)) {
                follow(
                        next,
                        e -> e instanceof End.AtReference r && r.reference().equals(mate) || shown.test(e));
            }
        }
    }

    private void tell(Away end) {
        if (told.add(end)) {
            ends.add(end);
        }
    }

    private Away part(Component c, String port) {
        String caution = energy.caution(c).orElse(null);
        String called = caution == null ? c.tag() : words.called(c);
        String name = c.findPort(port).map(p -> p.name()).map(n -> " " + n).orElse("");
        String setting = words.setting(c);
        return new Away(
                called + name + (setting.isEmpty() ? "" : ", " + setting) + ", " + words.address(c), null, caution);
    }
}
