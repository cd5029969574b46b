package linewalk.linker;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.Component;
import linewalk.drawing.HandTag;
import linewalk.drawing.Passage;
import linewalk.drawing.Port;
import linewalk.drawing.Position;

/** Reads {@code P-A B>T!pilot} into passages between one component's ports, by name or number of order. */
final class PassageNotation {

    private static final Pattern PASSAGE = Pattern.compile("([^->~!]+)([->~])([^->~!]+)(?:!(pressure|pilot))?");

    private final Component component;
    private String fault = "";

    PassageNotation(Component component) {
        this.component = component;
    }

    String fault() {
        return fault;
    }

    /** Empty, with a fault, where the notation can't be read or names no port of the component. */
    Optional<Position> position(HandTag.OfPosition tag) {
        List<Passage> passages = new ArrayList<>();
        String text = tag.passages() == null ? "" : tag.passages().strip();
        for (String word : text.isEmpty() ? new String[0] : text.split("[\\s,]+")) {
            Optional<Passage> passage = passage(word);
            if (passage.isEmpty()) {
                return Optional.empty();
            }
            passages.add(passage.get());
        }
        String by = tag.by() == null || tag.by().isBlank()
                ? Position.REST
                : tag.by().strip();
        List<String> names = new ArrayList<>();
        for (String name : by.split("[\\s,]+")) {
            names.add(name.equalsIgnoreCase(Position.REST) ? Position.REST : name);
        }
        return Optional.of(new Position(names, how(tag.how()), passages));
    }

    private static Position.How how(String word) {
        for (Position.How how : Position.How.values()) {
            if (word != null && how.name().equalsIgnoreCase(word.strip())) {
                return how;
            }
        }
        return null;
    }

    private Optional<Passage> passage(String word) {
        Matcher m = PASSAGE.matcher(word);
        if (!m.matches()) {
            fault = "'" + word + "' is no passage such as P-A, B>T or A~B";
            return Optional.empty();
        }
        Optional<Port> from = port(m.group(1));
        Optional<Port> to = port(m.group(3));
        if (from.isEmpty() || to.isEmpty()) {
            fault = component.tag() + " has no port " + (from.isEmpty() ? m.group(1) : m.group(3));
            return Optional.empty();
        }
        Passage.Opens opens =
                m.group(4) == null ? null : Passage.Opens.valueOf(m.group(4).toUpperCase(Locale.ROOT));
        String sign = m.group(2);
        return Optional.of(new Passage(from.get().id(), to.get().id(), sign.equals(">"), sign.equals("~"), opens));
    }

    private Optional<Port> port(String word) {
        Optional<Port> named = component.findPortNamed(word);
        if (named.isPresent() || !word.matches("\\d{1,3}")) {
            return named;
        }
        int order = Integer.parseInt(word);
        return order >= 1 && order <= component.ports().size()
                ? Optional.of(component.ports().get(order - 1))
                : Optional.empty();
    }
}
