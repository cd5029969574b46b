package linewalk.linker;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.End;
import linewalk.drawing.Finding;
import linewalk.drawing.Port;
import linewalk.drawing.Rule;

/**
 * References that name the far part and its port ({@code 1V2:A}) instead of a line number. Each end names the other's
 * part, so the two are no labels to compare; the line at the mate must end at the port that is named.
 */
final class FarPart {

    private static final Pattern PORT = Pattern.compile("(\\S+):(\\S{1,4})");

    private final Set<String> tags = new HashSet<>();
    private final Map<String, Component> owner = new HashMap<>();
    private final Map<String, Port> ports = new HashMap<>();

    FarPart(List<PageDraft> pages) {
        for (PageDraft p : pages) {
            for (Component c : p.components) {
                tags.add(Names.plain(c.tag()));
                c.ports().forEach(x -> {
                    owner.put(x.id(), c);
                    ports.put(x.id(), x);
                });
            }
        }
    }

    /** The designation and port that a label names, where the set has such a part. */
    boolean named(String label) {
        return said(label).isPresent();
    }

    private Optional<Matcher> said(String label) {
        return Optional.ofNullable(label)
                .map(l -> PORT.matcher(l.strip()))
                .filter(m -> m.matches() && tags.contains(Names.plain(m.group(1))));
    }

    void check(RefIndex index, Mates mates, MateLines lines, List<Finding> findings) {
        for (Ref r : index.refs) {
            said(r.label()).ifPresent(m -> {
                List<Ref> far =
                        index.refs.stream().filter(o -> mates.mated(r, o)).toList();
                if (!far.isEmpty() && far.stream().noneMatch(o -> ends(o, lines, m.group(1), m.group(2)))) {
                    findings.add(differs(r, far.get(0), lines));
                }
            });
        }
    }

    /** A port whose letter was not read may be the one that is named. */
    private boolean ends(Ref far, MateLines lines, String tag, String port) {
        return lines.line(far).isEmpty()
                || portsAt(far, lines).stream()
                        .anyMatch(p -> Names.plain(owner.get(p.id()).tag()).equals(Names.plain(tag))
                                && (p.name() == null || p.name().equalsIgnoreCase(port)));
    }

    private List<Port> portsAt(Ref far, MateLines lines) {
        return lines.line(far).stream()
                .flatMap(l -> l.ends().stream())
                .filter(e -> e instanceof End.AtPort p && ports.containsKey(p.port()))
                .map(e -> ports.get(((End.AtPort) e).port()))
                .toList();
    }

    private Finding differs(Ref r, Ref far, MateLines lines) {
        String there = portsAt(far, lines).stream()
                .map(p -> owner.get(p.id()).tag() + (p.name() == null ? "" : ":" + p.name()))
                .collect(Collectors.joining(", "));
        return new Finding(
                Rule.FAR_PART_DIFFERS,
                r.page().page,
                r.place(),
                List.of(r.id(), far.id()),
                List.of(),
                r.said() + " names " + r.label() + ", but the line at its mate " + far.said() + " ends "
                        + (there.isEmpty() ? "at no part" : "at " + there) + ".",
                there.isEmpty() ? null : "let it name " + there);
    }
}
