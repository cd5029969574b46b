package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import linewalk.drawing.Component;
import linewalk.drawing.Passage;
import linewalk.drawing.Point;
import linewalk.drawing.Position;
import linewalk.drawing.SheetReading;
import linewalk.importer.ValveArt.Hand;
import org.junit.jupiter.api.Test;

/** Every spool form, turned, mirrored, in several sizes and line widths, drawn in several hands: what is drawn is read. */
class ValveTableTest {

    /** @param squares from left to right; @param rest the one with the lines */
    private record Form(String name, Map<String, double[]> ports, int rest, String... squares) {}

    private static final Map<String, double[]> TWO = ports("P.5b A.5t");
    private static final Map<String, double[]> THREE = ports("P.25b T.75b A.25t");
    private static final Map<String, double[]> FOUR = ports("P.25b T.75b A.25t B.75t");
    private static final Map<String, double[]> FIVE = ports("R.2b P.5b S.8b A.3t B.7t");
    private static final Map<String, double[]> SIX = ports("P.2b T.5b C.8b A.2t B.5t D.8t");

    private static final List<Form> FORMS = List.of(
            new Form("2/2 closed", TWO, 1, "P>A", ""),
            new Form("2/2 open", TWO, 1, "", "P>A"),
            new Form("2/2 seat", TWO, 1, "P>A", "P!A"),
            new Form("3/2", THREE, 1, "P>A", "A>T"),
            new Form("4/2", FOUR, 1, "P>A B>T", "P>B A>T"),
            new Form("4/2 rest left", FOUR, 0, "P>A B>T", "P>B A>T"),
            new Form("4/3 closed", FOUR, 1, "P>A B>T", "", "P>B A>T"),
            new Form("4/3 tandem", FOUR, 1, "P>A B>T", "P-T", "P>B A>T"),
            new Form("4/3 float", FOUR, 1, "P>A B>T", "A=B=T", "P>B A>T"),
            new Form("4/3 regenerative", FOUR, 1, "P>A B>T", "P=A=B", "P>B A>T"),
            new Form("4/3 open", FOUR, 1, "P>A B>T", "P=T=A=B", "P>B A>T"),
            new Form("4/3 throttled", FOUR, 1, "P>A B>T", "A~P B~T", "P>B A>T"),
            new Form("5/2", FIVE, 1, "P>A B>S", "P>B A>R"),
            new Form("6/2", SIX, 1, "P>A B>T", "P>B C>D"),
            new Form("6/3", SIX, 1, "P>A B>T", "C>D", "P>B A>T"));

    private static Map<String, double[]> ports(String words) {
        Map<String, double[]> out = new LinkedHashMap<>();
        for (String w : words.split(" ")) {
            double x = Double.parseDouble("0" + w.substring(1, w.length() - 1));
            out.put(w.substring(0, 1), new double[] {x, w.endsWith("b") ? 1 : 0});
        }
        return out;
    }

    private static final double[] SIDES_PT = {15, 20, 28, 42, 64};
    private static final double[] WIDTHS_PT = {0.25, 0.5, 0.9};
    private static final int COLUMNS = 4;
    private static final double CELL = 16;

    /** A symbol is small beside its sheet. */
    private static final double SHEET = 80;

    private final Map<String, int[]> counts = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();

    @Test
    void everyFormIsReadHoweverItIsDrawn() {
        for (Hand hand : Hand.values()) {
            for (int turn = 0; turn < 4; turn++) {
                for (int size = 0; size < SIDES_PT.length; size++) {
                    boolean mirrored = (size + turn) % 2 == 1;
                    page(hand, turn, mirrored, SIDES_PT[size], WIDTHS_PT[(size + turn) % WIDTHS_PT.length]);
                }
            }
        }
        counts.forEach((what, n) -> System.out.printf("%-40s %4d of %4d%n", what, n[0], n[1]));
        assertThat(wrong).isEmpty();
    }

    static Drawn sheet(Hand hand, int turn, boolean mirrored, double sidePt, double widthPt) {
        Drawn page = Drawn.page(SHEET * sidePt, COLUMNS * CELL * sidePt);
        page.pen(widthPt);
        for (int i = 0; i < FORMS.size(); i++) {
            draw(new ValveArt(page, origin(i, sidePt), sidePt, turn, mirrored, hand), FORMS.get(i), i);
        }
        return page;
    }

    private static Point origin(int i, double sidePt) {
        return new Point((i % COLUMNS + 0.5) * CELL * sidePt, ((double) (i / COLUMNS) + 0.5) * CELL * sidePt);
    }

    private void page(Hand hand, int turn, boolean mirrored, double sidePt, double widthPt) {
        SheetReading read = sheet(hand, turn, mirrored, sidePt, widthPt).read();
        for (int i = 0; i < FORMS.size(); i++) {
            String got =
                    said(read, new ValveArt(null, origin(i, sidePt), sidePt, turn, mirrored, hand), FORMS.get(i), i);
            String want = want(FORMS.get(i), i);
            boolean right = got.equals(want);
            int[] n = counts.computeIfAbsent(FORMS.get(i).name(), k -> new int[2]);
            n[0] += right ? 1 : 0;
            n[1]++;
            if (!right) {
                wrong.add(FORMS.get(i).name() + " " + hand + " turn " + turn + (mirrored ? " mirrored" : "") + " side "
                        + sidePt + " width " + widthPt + ": " + got + " for " + want);
            }
        }
    }

    private static void draw(ValveArt art, Form form, int i) {
        int n = form.squares().length;
        art.squares(n, form.rest());
        for (int k = 0; k < n; k++) {
            art.square(k - form.rest(), form.squares()[k], form.ports());
        }
        double left = -form.rest();
        double right = n - form.rest();
        if (n == 3 || form.rest() == 1) {
            art.solenoid(left, -1, "Y" + (i + 20) + "A");
        } else {
            art.spring(left, -1, 0.3, 0.6);
        }
        if (n == 3 || form.rest() == 0) {
            art.solenoid(right, 1, "Y" + (i + 20) + "B");
        } else {
            art.spring(right, 1, 0.3, 0.6);
        }
        if (n == 3) {
            art.spring(left, -1, 0.6, 0.85);
            art.spring(right, 1, 0.6, 0.85);
        }
        lines(art, form);
        art.text(1.3, 1.8, "1V" + (i + 1));
    }

    /** Long, and of unequal length: a short stroke is no line, two equal ones side by side are a shaft. */
    private static void lines(ValveArt art, Form form) {
        double[] out = {3.3, 3.3};
        for (double[] p : form.ports().values()) {
            int side = (int) p[1];
            art.whole(p[0], p[1], p[0], side == 0 ? -out[0] : 1 + out[1]);
            out[side] *= 1.4;
        }
    }

    private static String want(Form form, int i) {
        List<String> out = new ArrayList<>();
        int n = form.squares().length;
        for (int k = 0; k < n; k++) {
            String by = k == form.rest() ? "rest spring" : "Y" + (i + 20) + (k == 0 ? "A" : "B") + " solenoid";
            out.add(by + ": " + passages(form.squares()[k]));
        }
        return out.stream().sorted().collect(Collectors.joining("; "));
    }

    private static String passages(String says) {
        List<String> out = new ArrayList<>();
        for (String w : says.isEmpty() ? new String[0] : says.split(" ")) {
            if (w.contains("=")) {
                List<String> names = List.of(w.split("="));
                String hub = names.contains("T") ? "T" : "P";
                names.stream().filter(x -> !x.equals(hub)).forEach(x -> out.add(pair(x, '-', hub)));
            } else {
                char sign = w.charAt(1);
                out.add(sign == '!' ? w : pair(w.substring(0, 1), sign == '~' ? '~' : '-', w.substring(2)));
            }
        }
        return out.stream().sorted().collect(Collectors.joining(" "));
    }

    private static String pair(String a, char sign, String b) {
        return a.compareTo(b) < 0 ? a + sign + b : b + sign + a;
    }

    private static String said(SheetReading read, ValveArt art, Form form, int i) {
        Component c = read.components().stream()
                .filter(x -> x.tag().equals("1V" + (i + 1)))
                .findFirst()
                .orElse(null);
        if (c == null) {
            return "no component";
        }
        return c.positions().stream()
                .map(p -> String.join(" ", p.by()) + " " + how(p) + ": "
                        + p.passages().stream()
                                .map(x -> passage(x, c, art, form))
                                .sorted()
                                .collect(Collectors.joining(" ")))
                .sorted()
                .collect(Collectors.joining("; "));
    }

    private static String how(Position p) {
        return String.valueOf(p.how()).toLowerCase(java.util.Locale.ROOT);
    }

    private static String passage(Passage x, Component c, ValveArt art, Form form) {
        String from = letter(c.findPort(x.from()).orElseThrow().place(), art, form);
        String to = letter(c.findPort(x.to()).orElseThrow().place(), art, form);
        return x.oneWay() ? from + "!" + to : pair(from, x.throttled() ? '~' : '-', to);
    }

    private static String letter(Point place, ValveArt art, Form form) {
        return form.ports().entrySet().stream()
                .min(Comparator.comparingDouble(
                        e -> art.at(e.getValue()[0], e.getValue()[1]).distancePt(place)))
                .orElseThrow()
                .getKey();
    }
}
