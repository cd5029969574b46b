package linewalk.renderer.iso;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import linewalk.drawing.Position;
import linewalk.drawing.Position.How;

/**
 * The squares of a directional valve from left to right. An operator stands beside the square it brings about (ISO
 * 1219-1), so the position at rest lies between those that two solenoids bring about.
 */
final class SpoolRow {

    /** Positions that share a square stand in one list, the one at rest first. */
    private final List<List<Position>> squares = new ArrayList<>();

    SpoolRow(List<Position> positions) {
        List<Position> rest =
                positions.stream().filter(Position::isRest).limit(1).toList();
        List<Position> shifted = positions.stream().filter(p -> !p.isRest()).toList();
        Optional<Position> held =
                rest.stream().flatMap(r -> held(r, shifted).stream()).findFirst();
        boolean asListed = rest.isEmpty() || isBetween(positions, rest.get(0));
        for (Position p : asListed ? positions : inOrder(rest.get(0), shifted)) {
            if (p.isRest() && held.isPresent()) {
                squares.add(List.of(p, held.get()));
            } else if (held.isEmpty() || p != held.get()) {
                squares.add(List.of(p));
            }
        }
    }

    /** What brings the valve back to its square at rest, where nothing else does. */
    private static Optional<Position> held(Position rest, List<Position> shifted) {
        return shifted.size() == 2
                        && rest.how() != How.SPRING
                        && !rest.passages().isEmpty()
                ? shifted.stream()
                        .filter(p -> p.passages().equals(rest.passages()))
                        .findFirst()
                : Optional.empty();
    }

    private static boolean isBetween(List<Position> positions, Position rest) {
        int at = positions.indexOf(rest);
        return at > 0 && (at < positions.size() - 1 || positions.size() == 2);
    }

    /** Solenoid a at the left and b at the right, as they are usually named; else as listed. */
    private static List<Position> inOrder(Position rest, List<Position> shifted) {
        List<Position> row = new ArrayList<>(shifted);
        row.sort((p, q) -> Boolean.compare(isNamed(q, "a"), isNamed(p, "a")));
        boolean right = row.size() == 1 && isNamed(row.get(0), "b");
        row.add(Math.min(right ? 0 : 1, row.size()), rest);
        return row;
    }

    private static boolean isNamed(Position p, String last) {
        return p.how() == How.SOLENOID
                && p.by().stream().anyMatch(n -> n.toLowerCase(Locale.ROOT).endsWith(last));
    }

    int size() {
        return squares.size();
    }

    Position get(int i) {
        return squares.get(i).get(0);
    }

    List<Position> all(int i) {
        return squares.get(i);
    }

    /** Of the square that a position is drawn in; the one at rest where the position is not known, else the first. */
    int indexOf(Optional<Position> position) {
        for (int i = 0; i < squares.size(); i++) {
            if (position.isPresent() && squares.get(i).contains(position.get())) {
                return i;
            }
        }
        return Math.max(0, rest());
    }

    /** Less than zero where no position is at rest. */
    int rest() {
        for (int i = 0; i < squares.size(); i++) {
            if (get(i).isRest()) {
                return i;
            }
        }
        return -1;
    }
}
