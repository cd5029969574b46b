package linewalk.samples.random;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import linewalk.samples.machine.Furniture;
import linewalk.samples.machine.Part;
import linewalk.samples.symbol.Spot;

/** Draws what stands beside a circuit: enclosures, leaders, balloons. */
final class Beside {
    private static final List<String> REMARKS = List.of(
            "8x M12x110-10.9", "CLAMPS EVERY 1500", "HOSE LOOP, R 400 MIN.", "4x M16x50-8.8 / 80 Nm", "SEE NOTE 2");

    private final Board board;
    private final Chance chance;
    private final List<Part> parts;
    private final List<Furniture> things = new ArrayList<>();
    private final List<Board.Leg> edges = new ArrayList<>();

    Beside(Board board, Chance chance, List<Part> parts) {
        this.board = board;
        this.chance = chance;
        this.parts = parts;
    }

    List<Furniture> draw() {
        for (int i = chance.between(0, 2); i > 0; i--) {
            repeat(20, this::enclosure);
        }
        for (int i = chance.between(0, 3); i > 0; i--) {
            repeat(15, this::leader);
        }
        if (chance.is(0.4)) {
            repeat(15, this::balloon);
        }
        return List.copyOf(things);
    }

    private interface Attempt {
        Furniture tryIt();
    }

    private void repeat(int tries, Attempt attempt) {
        for (int i = 0; i < tries; i++) {
            Furniture thing = attempt.tryIt();
            if (thing != null) {
                things.add(thing);
                return;
            }
        }
    }

    private Furniture enclosure() {
        Part first = chance.of(parts);
        List<Part> inside = parts.stream()
                .sorted(Comparator.comparingDouble(part -> Area.of(at(part)).distance(at(first))))
                .limit(chance.between(1, 5))
                .toList();
        Area area = inside.stream()
                .map(part -> Extent.of(part.symbol(), part.place()).join(Area.of(part.tagAt())))
                .reduce(Area::join)
                .orElseThrow();
        double x0 = area.x0() - chance.between(0.6, 3);
        double y0 = area.y0() - chance.between(0.9, 3);
        double x1 = area.x1() + chance.between(0.6, 4);
        double y1 = area.y1() + chance.between(0.6, 3);
        String name = chance.of(List.of("MANIFOLD MB", "UNIT U", "BLOCK B")) + chance.between(1, 9);
        Area title = Extent.text(name, 0.38, true, x0 + 0.4, y0 + 0.6);
        List<Board.Leg> sides = sides(x0, y0, x1, y1);
        boolean fits = title.x1() < x1 - 0.4 && sides.stream().allMatch(this::isFree) && board.hasRoom(title, 0.25, "");
        List<Furniture.FacePort> ports = fits ? facePorts(sides) : null;
        if (ports == null) {
            return null;
        }
        sides.forEach(side -> board.take(side.area(), "enclosure"));
        board.take(title, "enclosure");
        edges.addAll(sides);
        return new Furniture.Enclosure(name, x0, y0, x1, y1, ports);
    }

    private List<Board.Leg> sides(double x0, double y0, double x1, double y1) {
        List<Spot> corners = List.of(new Spot(x0, y0), new Spot(x1, y0), new Spot(x1, y1), new Spot(x0, y1));
        List<Board.Leg> out = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            out.add(new Board.Leg(corners.get(i), corners.get((i + 1) % 4), this));
        }
        return out;
    }

    private boolean isFree(Board.Leg side) {
        Area area = side.area();
        return area.isWithin(Board.SHEET)
                && board.solids().stream().noneMatch(solid -> solid.area().distance(area) < 0.35)
                && board.corners().stream().noneMatch(corner -> area.distance(corner) < 0.6)
                && board.legs().stream().noneMatch(leg -> leg.area().distance(area) < 0.6 && !isCut(side, leg));
    }

    /** Square across the side, away from the enclosure's corners. */
    private static boolean isCut(Board.Leg side, Board.Leg leg) {
        return side.level() != leg.level()
                && side.area().distance(leg.area()) == 0
                && leg.area().distance(side.a()) > 0.6
                && leg.area().distance(side.b()) > 0.6;
    }

    /** Marked and named, or not at all; null where a name has no room. */
    private List<Furniture.FacePort> facePorts(List<Board.Leg> sides) {
        List<Furniture.FacePort> out = new ArrayList<>();
        if (chance.is(0.35)) {
            return out;
        }
        List<Area> taken = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Board.Leg side = sides.get(i);
            for (Board.Leg leg : board.legs()) {
                if (isCut(side, leg)) {
                    Spot at = side.level()
                            ? new Spot(leg.a().x(), side.a().y())
                            : new Spot(side.a().x(), leg.a().y());
                    String name = chance.of(List.of("A", "B", "P", "T", "M", "L")) + chance.between(1, 9);
                    double width = Extent.width(name, 0.3, true);
                    double x = i == 1 ? at.x() + 0.28 : at.x() - 0.28 - width;
                    Area text = Extent.text(name, 0.3, true, x, at.y() + (i == 2 ? 0.42 : -0.42));
                    taken.add(text);
                    out.add(new Furniture.FacePort(name, at.x(), at.y()));
                }
            }
        }
        boolean clash = taken.stream()
                .anyMatch(text -> !board.hasRoom(text, 0.1, "")
                        || taken.stream().anyMatch(other -> other != text && other.distance(text) < 0.15));
        if (clash) {
            return null;
        }
        taken.forEach(text -> board.take(text, "enclosure"));
        out.forEach(port -> board.take(Area.around(port.x(), port.y(), 0.16, 0.16), "enclosure"));
        return out;
    }

    /** Its tip on a line or on an enclosure. */
    private Furniture leader() {
        List<Board.Leg> on = edges.isEmpty() || chance.is(0.5) ? board.legs() : edges;
        List<Board.Leg> long1 = on.stream().filter(leg -> leg.length() > 2).toList();
        if (long1.isEmpty()) {
            return null;
        }
        Area leg = chance.of(long1).area();
        double t = chance.between(0.25, 0.75);
        Spot tip = new Spot(leg.x0() + t * leg.width(), leg.y0() + t * leg.height());
        Spot knee = tip.plus(sign() * chance.between(0.8, 3), sign() * chance.between(0.8, 3));
        String text = chance.of(REMARKS);
        double width = Extent.width(text, 0.3, false) + 0.3;
        Area shelf = new Area(knee.x(), knee.y() - 0.45, knee.x() + width, knee.y());
        // Under its own pointing line the text would have no room.
        boolean aside = knee.x() > tip.x() || knee.y() < tip.y();
        boolean clear = aside
                && board.corners().stream().noneMatch(corner -> Area.of(corner).distance(tip) < 0.7)
                && board.hasRoom(shelf, 0.3, "")
                && isClear(tip, knee, leg)
                && board.legs().stream()
                        .noneMatch(other ->
                                !other.area().equals(leg) && other.area().distance(tip) < 0.6);
        if (!clear) {
            return null;
        }
        board.take(shelf, "leader");
        board.take(Area.of(tip, knee), "leader");
        return new Furniture.Leader(tip, knee, text);
    }

    private double sign() {
        return chance.is(0.5) ? 1 : -1;
    }

    private boolean isClear(Spot tip, Spot knee, Area target) {
        return board.legs().stream()
                        .noneMatch(leg -> !leg.area().equals(target)
                                && leg.area().grown(0.3).isMetBy(tip, knee))
                && board.solids().stream()
                        .noneMatch(solid -> !solid.area().equals(target)
                                && solid.area().grown(0.25).isMetBy(tip, knee));
    }

    /** A small part shown larger elsewhere. */
    private Furniture balloon() {
        Part part = chance.of(parts);
        Area outline = Extent.of(part.symbol(), part.place());
        Spot ring = at(part);
        double radius = 0.15
                + Math.hypot(
                        Math.max(outline.x1() - ring.x(), ring.x() - outline.x0()),
                        Math.max(outline.y1() - ring.y(), ring.y() - outline.y0()));
        double turn = chance.between(0, 2 * Math.PI);
        double distance = radius + chance.between(1.5, 5);
        Spot balloon = ring.plus(Math.cos(turn) * distance, Math.sin(turn) * distance);
        Spot start = ring.plus(Math.cos(turn) * radius, Math.sin(turn) * radius);
        Area room = Area.around(balloon.x(), balloon.y(), 0.75, 0.75);
        boolean drawn = radius < 1.8
                && board.solids().stream()
                        .allMatch(solid -> solid.owner().equals(part.tag()) || !meetsRing(solid.area(), ring, radius));
        if (radius > 2.6
                || !board.hasRoom(room, 0.4, "")
                || !isClear(start, balloon, null)
                || drawn && ringMeetsLines(ring, radius, start)) {
            return null;
        }
        board.take(room, "balloon");
        board.take(Area.of(start, balloon), "balloon");
        String letter = chance.of(List.of("A", "B", "D", "E", "F", "G"));
        return new Furniture.Bubble(
                ring, drawn ? radius : -radius, balloon, letter, Integer.toString(chance.between(1, 9)));
    }

    private static boolean meetsRing(Area area, Spot centre, double radius) {
        double far = Math.hypot(
                Math.max(Math.abs(area.x0() - centre.x()), Math.abs(area.x1() - centre.x())),
                Math.max(Math.abs(area.y0() - centre.y()), Math.abs(area.y1() - centre.y())));
        return area.distance(centre) < radius + 0.2 && far > radius - 0.2;
    }

    /** Other than straight through; a bend on the ring or a line along it. */
    private boolean ringMeetsLines(Spot centre, double radius, Spot start) {
        return board.corners().stream()
                        .anyMatch(corner -> Math.abs(Area.of(corner).distance(centre) - radius) < 0.3)
                || board.legs().stream()
                        .anyMatch(leg -> leg.area().distance(centre) > 0.6 * radius
                                        && leg.area().distance(centre) < radius + 0.3
                                || leg.area().distance(start) < 0.4);
    }

    private static Spot at(Part part) {
        return new Spot(part.place().x(), part.place().y());
    }
}
