package linewalk.samples.random;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.samples.machine.Part;
import linewalk.samples.machine.Words;
import linewalk.samples.symbol.Place;
import linewalk.samples.symbol.Spot;
import linewalk.samples.symbol.Symbol;

/** Puts parts on the board, each with its texts and with room to reach its ports. */
final class Parts {
    private static final double TAG = 0.42;
    private static final double SETTING = 0.3;
    private static final double PORT = 0.24;

    private final Board board;
    private final Chance chance;
    private final int circuit;
    private final double apart;
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, Tip> ports = new LinkedHashMap<>();

    Parts(Board board, Chance chance, int circuit) {
        this.board = board;
        this.chance = chance;
        this.circuit = circuit;
        this.apart = chance.between(1.0, 2.2);
    }

    List<Part> parts() {
        return List.copyOf(parts);
    }

    /** By TAG:PORT. */
    Map<String, Tip> ports() {
        return new LinkedHashMap<>(ports);
    }

    void place(int count) {
        for (int number = 1; number <= count; number++) {
            Kit kit = chance.of(Kit.all());
            for (int tries = 0; tries < 60 && parts.size() < number; tries++) {
                tryToPlace(kit, number);
            }
        }
    }

    private void tryToPlace(Kit kit, int number) {
        Symbol symbol = kit.symbol().apply(number);
        Area sheet = Board.SHEET;
        Place place = new Place(
                chance.snapped(sheet.x0() + 2, sheet.x1() - 2),
                chance.snapped(sheet.y0() + 2, sheet.y1() - 2),
                chance.of(kit.turns()),
                chance.is(0.3));
        String tag = kit.letter().equals("MP") ? "MP" + number : circuit + kit.letter() + number;
        Words setting = kit.settings().isEmpty() || chance.is(0.4) ? null : chance.of(kit.settings());
        Area outline = Extent.of(symbol, place);
        Map<String, Tip> tips = tips(tag, symbol, place, outline);
        boolean free = board.hasRoom(outline, apart, "")
                && tips.values().stream().allMatch(tip -> board.hasRoom(reserve(tip), 0.5, ""));
        Spot text = free ? textPlace(tag, setting, outline, tips) : null;
        if (text == null) {
            return;
        }
        Part part = new Part(tag, "", symbol, place, setting, "", text);
        parts.add(part);
        board.take(outline, tag);
        board.take(room(tag, setting, text), tag + " text");
        letters(part).forEach(area -> board.take(area, tag));
        tips.forEach((name, tip) -> board.take(reserve(tip), tip.port()));
        ports.putAll(tips);
    }

    private static List<Area> letters(Part part) {
        List<Area> out = new ArrayList<>();
        part.symbol().letters().forEach((name, at) -> {
            Spot spot = part.place().of(at);
            out.add(Area.around(spot.x(), spot.y(), Extent.width(name, PORT, false) / 2, PORT * 0.42));
        });
        return out;
    }

    private Map<String, Tip> tips(String tag, Symbol symbol, Place place, Area outline) {
        Map<String, Tip> out = new LinkedHashMap<>();
        symbol.ports().keySet().stream().sorted().forEach(name -> {
            Spot local = symbol.ports().get(name);
            Spot at = place.of(local);
            Spot way = place.of(
                    local.plus(wayOut(symbol, local).x(), wayOut(symbol, local).y()));
            int dx = (int) Math.round(way.x() - at.x());
            int dy = (int) Math.round(way.y() - at.y());
            double x = dx == 0 ? at.x() : dx > 0 ? outline.x1() + 0.5 : outline.x0() - 0.5;
            double y = dy == 0 ? at.y() : dy > 0 ? outline.y1() + 0.5 : outline.y0() - 0.5;
            String port = tag + ":" + name;
            out.put(port, new Tip(at, new Spot(x, y), dx, dy, tag, port));
        });
        return out;
    }

    /** Upwards out of a reservoir, else over the nearest side. */
    private static Spot wayOut(Symbol symbol, Spot port) {
        Spot half = symbol.half();
        if (symbol.kind().equals("tank")) {
            return new Spot(0, -1);
        }
        boolean aside = Math.abs(port.y()) < half.y() - 1e-6
                && (Math.abs(port.x()) > half.x() - 1e-6 || Math.abs(port.x()) > Math.abs(port.y()));
        return aside ? new Spot(Math.signum(port.x()), 0) : new Spot(0, Math.signum(port.y()));
    }

    /** Where only the port's own line may run. */
    private static Area reserve(Tip tip) {
        return Area.of(tip.at(), tip.farther(0.5)).grown(0.05);
    }

    private Spot textPlace(String tag, Words setting, Area outline, Map<String, Tip> tips) {
        Area size = room(tag, setting, new Spot(0, 0));
        double middle = (outline.y0() + outline.y1()) / 2 - (size.y1() + size.y0()) / 2;
        List<Spot> places = List.of(
                new Spot(outline.x1() + 0.35, middle),
                new Spot(outline.x0() - 0.35 - size.width(), middle),
                new Spot(outline.x0(), outline.y0() - 0.3 - size.y1()),
                new Spot(outline.x0() + chance.between(0, outline.width()), outline.y1() + 0.3 - size.y0()),
                new Spot(outline.x1() + 0.3, outline.y1() - size.y1() + 0.2));
        for (Spot at : chance.shuffled(places)) {
            Area area = room(tag, setting, at);
            boolean offPorts = tips.values().stream()
                    .noneMatch(tip -> reserve(tip).grown(0.3).distance(area) == 0);
            if (offPorts && board.hasRoom(area, 0.6, "")) {
                return at;
            }
        }
        return null;
    }

    private static Area room(String tag, Words setting, Spot at) {
        Area area = Extent.text(tag, TAG, true, at.x(), at.y());
        if (setting == null) {
            return area;
        }
        return area.join(Extent.text(setting.metric(), SETTING, false, at.x(), at.y() + 0.5))
                .join(Extent.text(setting.us(), SETTING, false, at.x(), at.y() + 0.5));
    }
}
