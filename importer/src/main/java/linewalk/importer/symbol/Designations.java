package linewalk.importer.symbol;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import linewalk.importer.lettering.Label;
import linewalk.importer.page.Near;

/**
 * Ties designations to figures: each designation to the nearest figure and each figure to one designation, nearest pairs
 * first. Forms: ISO 1219-2:1995 ({@code 1V2}, of several units {@code 3-1V2} or {@code 11.2-V4}), ISO 1219-2:2012 ({@code 1.2}),
 * IEC 81346-2 ({@code -QM4}), letters and number ({@code CYL1}, {@code V-12}), a word and a number ({@code CYL 1}).
 */
public final class Designations {

    /** The unit to which a part belongs, before its own designation. */
    private static final String UNIT = "(?:\\d{1,2}-(?=\\d)|\\d{1,2}\\.\\d{1,2}-(?=[A-Z]))?";

    private static final Pattern FORM = Pattern.compile(
            "(?:=[A-Z0-9.]{1,6}|[+][A-Z0-9.]{1,6})*-[A-Z]{1,3}\\d{1,3}(?:[.]\\d{1,2})?|" + UNIT
                    + "\\d{0,3}[A-Z]{1,4}\\d{1,3}(?:[.-]\\d{1,2})?[A-Z]?|(?:[A-Z0-9]{1,3}-)?[A-Z]?\\d{1,2}\\.\\d{1,2}(?:\\.\\d{1,2})?|[A-Z]{1,5}-\\d{1,3}[A-Z]?");
    /** Of a pipe: outside diameter and wall; a scan's figures may look like letters. */
    private static final Pattern SIZE = Pattern.compile("\\d[\\dODZGSBIL]{0,2}X[\\dZSI]{1,2}(?:[.,]\\d)?");

    /** In two words, the first of which names the kind of part. */
    private static final Pattern WORDED = Pattern.compile(
            "(?:CYL(?:INDER)?|PU?MP|MO?TO?R|VALVE|VLV|V|ACC|FI?LTE?R?|COOLER|CLR|HX|[RCPS]V|PRV|HM|EM|TP|PG)\\.? \\d{1,3}[A-Z]?");

    private static final Pattern RESERVOIR = Pattern.compile("(?:(?:OIL |HEADER )?TANK|RESERVOIR)(?:[ -]?\\d{1,2})?");
    /** No designation, but it tells what it stands in: other languages too, and how much that holds. */
    private static final Pattern RESERVOIR_WORDS = Pattern.compile(
            "(?i)(?:\\p{L}+ )?(?:TANK|RESERVOIR|DEP[OÓ]SITO|TANQUE|BEH[AÄ]LTER|R[EÉ]SERVOIR|B[AÂ]CHE|SERBATOIO|ZBIORNIK|N[AÁ]DR[ZŽ])"
                    + "(?:[ -]?\\d{1,2})?(?:[ ,:=-]*\\d{1,5}(?:[.,]\\d{1,3})? ?(?:LT?|LTR|LIT(?:ER|RE)S?|GAL(?:LONS?)?|DM3)\\.?)?");

    private static final Pattern SOLENOID = Pattern.compile("-MB\\d{1,3}|-?(?:" + UNIT
            + "\\d{0,3}YV?\\d{1,3}[A-Za-z]?|\\d?YA?\\d{1,2}[AB]?|\\d?YA|S(?:OL)?[ -]?\\d{1,3}[A-Z]?|SOL[A-Z])");
    private static final Pattern PORT = Pattern.compile("[ABPTXYLMRS]\\d?");

    /** How far a designation may stand from its figure, in text sizes. */
    private static final double REACH = 7;

    /**
     * "P1" may be a pump or the port of a manifold, "S3" a switch or a coil: only the nearest text of a figure without any
     * other is taken.
     */
    private static final double OTHERWISE = 5;

    /** By its letter a pump (ISO 1219-2), which is drawn as a circle: not the valve of its control beside it. */
    private static final Pattern PUMP = Pattern.compile(UNIT + "\\d{0,3}P-?\\d{1,3}");

    /** Where so many valves have names of their own on a sheet, those of coils are no valves'. */
    private static final int VALVES = 2;

    private static final Pattern VALVE =
            Pattern.compile("(?:\\d{1,2}(?:\\.\\d{1,2})?-)?\\d{0,2}V\\d{1,3}(?:\\.\\d{1,2})?");

    /** Letter code Y for what electricity moves, with a number (IEC 60750, from memory). */
    private static final Pattern COIL = Pattern.compile(UNIT + "\\d{0,2}Y\\d{1,3}[A-Za-z]?");

    /** Inside the circle of an electric motor, which drives the pump beside it. */
    private static final Pattern MOTOR = Pattern.compile("M(?: ?[13]?~)?");

    private static final double NO_CIRCLE = 3;

    private Designations() {}

    static boolean isReservoir(String text) {
        return RESERVOIR_WORDS.matcher(text).matches();
    }

    public static boolean looksLike(String text) {
        return fits(text) && !PORT.matcher(text).matches();
    }

    /** A solenoid's own name. */
    public static boolean isCoil(String text) {
        return COIL.matcher(text).matches();
    }

    /** The designation that a label begins with. */
    public static String of(Label l) {
        List<Label.Word> words = l.words();
        String two =
                words.size() < 2 ? "" : words.get(0).text() + " " + words.get(1).text();
        return WORDED.matcher(two).matches() ? two : words.get(0).text();
    }

    private record Pair(Body body, Label label, double cost) {}

    /** A figure's designation and how sure the pair is, 0 to 1. */
    public record Named(Label label, double confidence) {

        boolean isNumber() {
            return label.text().matches("\\d+");
        }
    }

    /** Figures that have nothing but an item number, where most have a designation: the number alone makes no part of them. */
    public static Set<Body> numbered(Map<Body, Named> named) {
        Set<Body> numbered =
                named.keySet().stream().filter(b -> named.get(b).isNumber()).collect(Collectors.toSet());
        return 2 * numbered.size() < named.size() ? numbered : Set.of();
    }

    /** @param taken labels that already say something else: references, zone labels, line numbers */
    public static Map<Body, Named> assign(List<Body> bodies, List<Label> labels, Set<Label> taken, Symbols symbols) {
        List<Pair> pairs = new ArrayList<>();
        Near<Body> near = new Near<>(bodies, Body::box);
        List<Label> motors =
                labels.stream().filter(l -> MOTOR.matcher(l.text()).matches()).toList();
        boolean coils =
                labels.stream().filter(l -> VALVE.matcher(l.text()).matches()).count() >= VALVES;
        for (Label l : labels) {
            boolean tank = RESERVOIR.matcher(l.text()).matches();
            String word = of(l);
            boolean face = PORT.matcher(l.text()).matches() && nearPort(l, symbols);
            if (face
                    || coils && isCoil(l.text())
                    || taken.contains(l)
                    || symbols.inTable(l.center())
                    || !(tank || fits(l.text()) || fits(word) && valued(l))) {
                continue;
            }
            for (Body b : near.touching(l.box().grow(REACH * l.sizePt()))) {
                pairs.add(new Pair(b, l, cost(b, l, tank, motors)));
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::cost));
        Map<Body, Named> named = settle(pairs);
        symbols.balloons().name(bodies, named, labels, symbols);
        return named;
    }

    /** A value follows the designation on its line; a remark such as "1A1 BORE" is about another part. */
    private static boolean valued(Label l) {
        return l.words().size() < 5 && l.text().substring(of(l).length()).matches(".*\\d.*");
    }

    /** Printed beside a port mark on an enclosure's face. */
    private static boolean nearPort(Label l, Symbols symbols) {
        return symbols.portMarks().stream().anyMatch(m -> m.box().distancePt(l.box()) < 2 * l.sizePt());
    }

    /** Where names are led by a hyphen, coils have names of their own beside their valve's. */
    private static boolean fits(String text) {
        boolean coil = text.startsWith("-") && SOLENOID.matcher(text).matches();
        return FORM.matcher(text).matches() && !coil && !SIZE.matcher(text).matches()
                || WORDED.matcher(text).matches();
    }

    private static double cost(Body b, Label l, boolean tank, List<Label> motors) {
        double gap = b.box().distancePt(l.box()) / l.sizePt();
        double cost = tank == b.reservoir() ? gap : gap + 6;
        if (!fits(l.text()) && !tank) {
            cost += 2;
        }
        if (SOLENOID.matcher(l.text()).matches() || PORT.matcher(l.text()).matches()) {
            cost += OTHERWISE;
        }
        boolean motor = motors.stream().anyMatch(m -> b.box().contains(m.center()));
        if (PUMP.matcher(of(l)).matches() && (motor || b.outlines().stream().noneMatch(Outline::circle))) {
            cost += NO_CIRCLE;
        }
        return cost;
    }

    private static Map<Body, Named> settle(List<Pair> pairs) {
        Map<Body, Named> named = new IdentityHashMap<>();
        Set<Label> used = new HashSet<>();
        Map<Label, Double> second = new HashMap<>();
        for (Pair p : pairs) {
            second.merge(p.label(), 1.0, Double::sum);
        }
        for (Pair p : pairs) {
            if (p.cost() <= REACH + 1 && !named.containsKey(p.body()) && used.add(p.label())) {
                double crowd = second.get(p.label()) > 1 ? 0.02 : 0;
                named.put(p.body(), new Named(p.label(), Math.max(0.5, 0.99 - 0.02 * p.cost() - crowd)));
            }
        }
        return named;
    }
}
