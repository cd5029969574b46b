package linewalk.importer.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Arrowheads too slender for {@link Solids}: from the end of a line its ink grows evenly wider, and is all at once no wider
 * than the pen again.
 */
final class Tips {

    private static final double STEP_PX = 0.5;

    /** Longest head in widths of the pen, and its least width. */
    private static final double LONGEST = 12;

    private static final double WIDER = 1.7;

    /** So much wider than the pen is the ink of another line. */
    private static final double WALL = 3;

    private static final double RAGGED_PX = 1.2;

    /** At the base the ink falls below this share of its width. */
    private static final double EDGE = 0.8;

    /** Cosines of the angle between a head and its shaft: below the one it is askew, below the other no head. */
    private static final double EVEN = Math.cos(Math.toRadians(7));

    /** The shorter side of a head in longer ones. */
    private static final double SIDES = 0.85;

    private static final double ASKEW = Math.cos(Math.toRadians(40));

    /** More corners make no head, whatever runs into it. */
    private static final int MOST_CORNERS = 8;

    /** How far before its middle its line may end, in spans: the tip was cut off. */
    private static final double CUT = 1.5;

    /** Places looked at on both sides of a head and at its base, and the share of them that may be otherwise. */
    private static final int SAMPLES = 28;

    private static final int BASE_SAMPLES = 4;

    private static final double MOST_WRONG = 0.15;

    /** Within this way the ink falls back to the pen. */
    private static final double DROP_PX = 2.5;

    private final Gauge gauge;
    private final Upright upright;
    private final List<Solid> known;

    /** @param known filled shapes that are no heads of their own any more */
    Tips(Gauge gauge, Upright upright, List<Solid> known) {
        this.gauge = gauge;
        this.upright = upright;
        this.known = known;
    }

    /** All filled shapes: those known, and heads; a known triangle that a head lies on gives way, since its line tells better. */
    List<Solid> of(List<Stretch> stretches) {
        List<Solid> heads = new ArrayList<>();
        for (Stretch s : stretches) {
            for (Stretch from : List.of(s, s.turned())) {
                head(ledOn(from)).filter(h -> fits(h, heads)).ifPresent(heads::add);
            }
        }
        List<Solid> all = new ArrayList<>(known);
        all.removeIf(k -> heads.stream().anyMatch(h -> same(h, k)));
        all.addAll(heads);
        all.replaceAll(k -> k.outline().size() == 3 ? alongShaft(k, stretches) : sharpened(k, stretches));
        return all;
    }

    /** What is left of a head that another line runs into: it is one if a line ends beyond it and its ink tapers towards there. */
    private Solid sharpened(Solid k, List<Stretch> stretches) {
        if (k.dot() || k.outline().size() > MOST_CORNERS) {
            return k;
        }
        double[] m = k.middle();
        for (Stretch s : stretches) {
            for (Stretch from : List.of(s, s.turned())) {
                double away = Math.hypot(m[0] - from.x0(), m[1] - from.y0());
                double along = from.along(m[0], m[1]);
                boolean beyond = away < Math.min(CUT * k.span(), LONGEST * from.widthPx())
                        && along > 0
                        && from.aside(m[0], m[1]) < along / 2;
                double deep = k.outline().stream()
                        .mapToDouble(p -> from.along(p[0], p[1]))
                        .max()
                        .orElse(0);
                Taper taper = beyond && deep < 0.8 * from.length() ? fitted(from, deep) : null;
                if (taper != null) {
                    return solid(from, taper, (int) (taper.lengthPx / STEP_PX));
                }
            }
        }
        return k;
    }

    /** The head at the start of a stretch that its ink agrees with best; null where none does well enough. */
    private Taper fitted(Stretch from, double deepPx) {
        Taper best = null;
        int least = Integer.MAX_VALUE;
        for (double length = 0.6 * deepPx; length <= 1.1 * deepPx; length += 1) {
            for (double half = length / 6; half < length / 1.6; half += 0.5) {
                Taper taper = new Taper(length, 2 * half);
                int wrong = wrong(from, taper, (int) (length / STEP_PX)) + wrongAtBase(from, taper);
                if (2 * half > WIDER * from.widthPx() && wrong < least) {
                    best = taper;
                    least = wrong;
                }
            }
        }
        return least <= MOST_WRONG * (SAMPLES + BASE_SAMPLES) ? best : null;
    }

    private int wrongAtBase(Stretch s, Taper t) {
        int wrong = 0;
        for (double aside : new double[] {-0.3 * t.widthPx(), 0.3 * t.widthPx()}) {
            wrong += inked(s, t.lengthPx() - 1.5, aside) ? 0 : 1;
            wrong += inked(s, t.lengthPx() + 2.5, aside) ? 1 : 0;
        }
        return wrong;
    }

    /** A head whose ink runs into other lines may lie askew: it is as long and as wide, but even about its shaft. */
    private Solid alongShaft(Solid k, List<Stretch> stretches) {
        double[] m = k.middle();
        List<Stretch> through = stretches.stream()
                .filter(s -> s.aside(m[0], m[1]) < s.widthPx()
                        && s.along(m[0], m[1]) > -LONGEST * s.widthPx()
                        && s.along(m[0], m[1]) < s.length() + LONGEST * s.widthPx())
                .toList();
        if (through.stream()
                .anyMatch(s -> k.outline().stream().anyMatch(tip -> isEven(k, tip) && cosine(k, tip, s) > EVEN))) {
            return k;
        }
        Solid sharp = sharpened(k, stretches);
        if (sharp != k) {
            return sharp;
        }
        for (Stretch s : stretches) {
            for (Stretch to : List.of(s, s.turned())) {
                boolean shaft = k.covers(to.x1(), to.y1()) && !k.covers(to.x0(), to.y0());
                Solid even = shaft ? even(k, to.turned()) : null;
                if (even != null) {
                    return even;
                }
            }
        }
        return k;
    }

    /** Both sides that meet at the tip are about as long. */
    private static boolean isEven(Solid k, double[] tip) {
        double[] sides = k.outline().stream()
                .filter(p -> p != tip)
                .mapToDouble(p -> Math.hypot(p[0] - tip[0], p[1] - tip[1]))
                .sorted()
                .toArray();
        return sides[0] > SIDES * sides[1];
    }

    /** Of the angle between a stretch and the way from a corner to the middle of the side across, without sign. */
    private static double cosine(Solid k, double[] tip, Stretch s) {
        double mx = (3 * k.middle()[0] - tip[0]) / 2;
        double my = (3 * k.middle()[1] - tip[1]) / 2;
        double along = s.along(mx, my) - s.along(tip[0], tip[1]);
        return Math.abs(along) / Math.max(1e-6, Math.hypot(mx - tip[0], my - tip[1]));
    }

    /** Null where the head is even already, or points elsewhere. */
    private static Solid even(Solid k, Stretch away) {
        List<double[]> byDepth = new ArrayList<>(k.outline());
        byDepth.sort(java.util.Comparator.comparingDouble(p -> away.along(p[0], p[1])));
        double[] tip = byDepth.get(0);
        double[] mid = {(byDepth.get(1)[0] + byDepth.get(2)[0]) / 2, (byDepth.get(1)[1] + byDepth.get(2)[1]) / 2};
        double length = away.along(mid[0], mid[1]) - away.along(tip[0], tip[1]);
        double cosine = length / Math.max(1e-6, Math.hypot(mid[0] - tip[0], mid[1] - tip[1]));
        if (isEven(k, tip) && cosine > EVEN || cosine < ASKEW || away.aside(tip[0], tip[1]) > 2 * away.widthPx()) {
            return null;
        }
        double dx = (away.x1() - away.x0()) / away.length();
        double dy = (away.y1() - away.y0()) / away.length();
        double half = Hull.area(k.outline()) / length;
        double[] base = {tip[0] + length * dx, tip[1] + length * dy};
        return new Solid(
                List.of(tip, new double[] {base[0] - half * dy, base[1] + half * dx}, new double[] {
                    base[0] + half * dy, base[1] - half * dx
                }),
                false);
    }

    private boolean fits(Solid head, List<Solid> heads) {
        double[] m = head.middle();
        return heads.stream().noneMatch(h -> h.covers(m[0], m[1]))
                && known.stream().noneMatch(k -> k.covers(m[0], m[1]) && !same(head, k));
    }

    private static boolean same(Solid head, Solid known) {
        double[] m = head.middle();
        double[] n = known.middle();
        double share = Hull.area(head.outline()) / Hull.area(known.outline());
        return !known.dot()
                && known.outline().size() <= 6
                && known.covers(m[0], m[1])
                && head.covers(n[0], n[1])
                && share > 0.6
                && share < 1.6;
    }

    /** From the far side of the filled shape that the stretch ends in. */
    private Stretch ledOn(Stretch s) {
        for (Solid k : known) {
            double[] before = s.at(-2, 0);
            if (k.dot() || !k.covers(before[0], before[1])) {
                continue;
            }
            double on = 2;
            while (on < LONGEST * s.widthPx() && covers(k, s.at(-on, 0))) {
                on += 1;
            }
            // its tip was cut off
            double most = 2 * on + 2;
            for (double more = on; more < most && inked(s, -more, 0); more += 1) {
                on = more;
            }
            double[] far = s.at(-on, 0);
            return new Stretch(far[0], far[1], s.x1(), s.y1(), s.widthPx());
        }
        return s;
    }

    private static boolean covers(Solid k, double[] p) {
        return k.covers(p[0], p[1]);
    }

    private Optional<Solid> head(Stretch s) {
        double[] width = new double[(int) (1.5 * LONGEST * s.widthPx() / STEP_PX)];
        for (int i = 0; i < width.length; i++) {
            width[i] = across(s, i * STEP_PX);
        }
        double[] sorted = width.clone();
        java.util.Arrays.sort(sorted);
        double pen = Math.max(sorted[width.length / 4], 0.8 * s.widthPx());
        int base = base(width, pen);
        if (base < 0) {
            return Optional.empty();
        }
        Taper taper = Taper.of(width, base, pen);
        boolean head = taper != null && ends(s, width, base, pen) && filled(s, taper, base);
        return head ? Optional.of(solid(s, taper, base)) : Optional.empty();
    }

    /** Where the ink is widest before it first falls back to the pen; -1 where it does not. */
    private static int base(double[] width, double pen) {
        int start = 0;
        while (start < width.length && width[start] > 1.3 * pen && start * STEP_PX < WALL * pen
                || start < width.length && width[start] >= 2 * WALL * pen) {
            start++;
        }
        int drop = (int) Math.ceil(DROP_PX / STEP_PX);
        double widest = 0;
        int at = start;
        for (int i = start; i + drop < width.length && width[i] < 2 * WALL * pen; i++) {
            if (width[i] >= widest) {
                widest = width[i];
                at = i;
            }
            boolean falls = width[i] > EDGE * widest && width[i + 1] < EDGE * widest;
            if (falls && widest > WIDER * pen + 1 && width[i + drop] < 1.3 * pen + 0.5) {
                return i - at < drop ? at : i; // the corners of the base are ragged
            }
            widest = falls ? 0 : widest;
        }
        return -1;
    }

    /**
     * How the ink grows towards the base.
     *
     * @param lengthPx from where it would be nothing
     */
    private record Taper(double lengthPx, double widthPx) {

        /** Null where it grows unevenly. The tip may be blunt: the pen itself is as wide. */
        static Taper of(double[] width, int base, double pen) {
            int from = base;
            while (from > 0 && width[from - 1] > 1.2 * pen && width[from - 1] <= width[from] + RAGGED_PX) {
                from--;
            }
            double[] at = new double[base - from + 1];
            for (int i = 0; i < at.length; i++) {
                at[i] = i * STEP_PX;
            }
            if (at.length < 6) {
                return null;
            }
            double[] wide = java.util.Arrays.copyOfRange(width, from, base + 1);
            Straight grows = Straight.through(at, wide, 0, at.length - 1);
            double slope = grows.dy() / Math.max(1e-6, grows.dx());
            double most = grows.y() + slope * (at[at.length - 1] - grows.x());
            int off = 0;
            for (int i = 0; i < at.length; i++) {
                off += grows.aside(at[i], wide[i]) > RAGGED_PX ? 1 : 0;
            }
            double length = most / Math.max(1e-6, slope);
            double before = base * STEP_PX - length;
            boolean whole = before > -1.5 * pen - 2 && before < 3 * pen + 4;
            boolean shaped = slope > 0 && length > 0.8 * most && length < 4 * most;
            return whole && shaped && off <= 0.15 * at.length ? new Taper(length, most) : null;
        }
    }

    /** Behind the base there is the shaft alone: neither barbs nor the other leg of a corner. */
    private boolean ends(Stretch s, double[] width, int base, double pen) {
        int after = base + (int) Math.ceil(DROP_PX / STEP_PX);
        int until = after + (int) Math.ceil(0.8 * width[base] / STEP_PX);
        if (until >= width.length) {
            return false;
        }
        int beside = 0;
        for (int i = after; i <= until; i++) {
            if (width[i] > 1.3 * pen + 0.5) {
                return false;
            }
            for (double side = 0.4; side <= 1; side += 0.2) {
                beside +=
                        inked(s, i * STEP_PX, side * width[base]) || inked(s, i * STEP_PX, -side * width[base]) ? 1 : 0;
            }
        }
        return beside < 0.4 * (until - after);
    }

    /** Ink inside both slanting sides, paper outside. */
    private boolean filled(Stretch s, Taper taper, int base) {
        return wrong(s, taper, base) <= MOST_WRONG * SAMPLES;
    }

    private int wrong(Stretch s, Taper taper, int base) {
        int wrong = 0;
        for (double share = 0.3; share < 0.95; share += 0.1) {
            double at = base * STEP_PX - (1 - share) * taper.lengthPx();
            double half = share * taper.widthPx() / 2;
            for (int side : new int[] {-1, 1}) {
                wrong += inked(s, at, side * Math.max(0, half - 1)) ? 0 : 1;
                wrong += inked(s, at, side * (half + 2)) ? 1 : 0;
            }
        }
        return wrong;
    }

    private Solid solid(Stretch s, Taper taper, int base) {
        double at = base * STEP_PX;
        double half = taper.widthPx() / 2;
        double tip = Math.max(at - taper.lengthPx(), -s.widthPx()); // a blunt one would stand beyond the line it meets
        return new Solid(List.of(s.at(tip, 0), s.at(at, half), s.at(at, -half)), false);
    }

    private boolean inked(Stretch s, double along, double aside) {
        double[] p = s.at(along, aside);
        return gauge.ink(upright, p[0], p[1]);
    }

    private double across(Stretch s, double along) {
        double[] p = s.at(along, 0);
        double[] q = s.at(along + 1, 0);
        double bx = upright.backX(p[0], p[1]);
        double by = upright.backY(p[0], p[1]);
        return gauge.across(bx, by, upright.backX(q[0], q[1]) - bx, upright.backY(q[0], q[1]) - by);
    }
}
