package linewalk.importer.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import linewalk.drawing.Box;
import linewalk.drawing.SheetReading.Name;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.SheetWords;
import linewalk.importer.page.Segment;

/**
 * Reads the title block: values stand in the caption's own text ("Sheet 3 of 8"), below it, to its right, or elsewhere in
 * its ruled field. Title blocks lie at the lower right, else along the bottom or the right edge.
 */
public final class TitleBlockFinder {

    private static final String SHEET_WORD = SheetWords.TITLED;
    private static final String OF = SheetWords.OF;
    private static final String NAME = "([A-Z]{0,4}-?\\d{1,4}[A-Z]?(?:-\\d{1,3})?)";
    private static final Pattern NUMBERED = Pattern.compile("(?:^|.*[\\s:;,-])" + SHEET_WORD
            + "\\.?\\s*(?:NO\\.?|NUMBER)?\\s*[:#]?\\s*" + NAME + "(?:\\s*(?:" + OF + "|/)\\s*(\\d{1,4}))?");
    private static final Pattern SHEET_CAPTION = Pattern.compile(
            SHEET_WORD + "\\s*(?:NO\\.?|NUMBER|NR\\.?)?\\s*(?:/?\\s*(?:" + OF + "|SHEETS)\\s*){0,2}[.:]?");
    private static final Pattern SHEET_VALUE = Pattern.compile(NAME + "(?:\\s*(?:" + OF + "|/)\\s*(\\d{1,4}))?");
    private static final Pattern DRAWING_CAPTION =
            Pattern.compile("(?:DRAWING|DWG|DRG|DOCUMENT|DOC|IDENTIFICATION)[ .-]*(?:NO|NUMBER|NR|NUM|ID)\\.?\\s*:?");
    private static final Pattern DRAWING_INLINE =
            Pattern.compile("(?:DRAWING|DWG|DRG|DOCUMENT|DOC)[ .-]*(?:NO|NUMBER|NR|NUM)\\.?\\s*:?\\s*(\\S*\\d\\S*)");
    private static final Pattern DRAWING_VALUE = Pattern.compile("[A-Z0-9][A-Z0-9./_ -]*\\d[A-Z0-9./_-]*");
    private static final Pattern REVISION_CAPTION = Pattern.compile("REV(?:ISION)?\\.?(?:\\s*INDEX)?\\s*:?");
    private static final Pattern REVISION_INLINE = Pattern.compile("REV(?:ISION)?\\.?\\s*:?\\s*([A-Z]|\\d{1,2})");
    private static final Pattern REVISION_VALUE = Pattern.compile("[A-Z]{1,2}|\\d{1,2}|[A-Z]\\d");
    /** Of a sheet's size, which may stand below its title. */
    private static final int SIZE_LETTERS = 2;

    private static final Pattern TITLE_CAPTION = Pattern.compile("(?:(?:DRAWING|DWG\\.?|SHEET)\\s*)?TITLE\\s*:?");

    private static final Pattern OF_ALL = Pattern.compile(SHEET_WORD + "\\.? ?\\d{1,4} " + OF + " \\d{1,4}");

    /** The text numbers the sheet among all: {@code SHEET 3 OF 12}. */
    public static boolean numbers(String text) {
        return OF_ALL.matcher(text.toUpperCase(Locale.ROOT)).matches();
    }

    /** "SH 5" in mid-sheet is a reference or a part, not the sheet's own name. */
    private static final double LEAST = 0.45;

    private final List<Label> labels;
    private final Cells cells;
    private final Box page;
    private final Set<Label> used = new HashSet<>();

    private TitleBlockFinder(List<Label> labels, Cells cells, Box page) {
        this.labels = labels;
        this.cells = cells;
        this.page = page;
    }

    /** @param rulings straight pieces of line work */
    public static TitleBlock find(List<Label> labels, List<Segment> rulings, double widthPt, double heightPt) {
        return new TitleBlockFinder(labels, new Cells(rulings), new Box(0, 0, widthPt, heightPt)).read();
    }

    private record Found(Name name, Integer count, double weight) {}

    private TitleBlock read() {
        List<Found> sheets = new ArrayList<>();
        for (Label l : labels) {
            numbered(l).ifPresent(sheets::add);
            captioned(l).ifPresent(sheets::add);
        }
        sheets.sort(Comparator.comparingDouble((Found f) -> -f.weight()));
        List<Name> names = new ArrayList<>();
        for (Found f : sheets) {
            if (names.stream().noneMatch(n -> n.name().equals(f.name().name()))) {
                names.add(f.name());
            }
        }
        String drawing = value(DRAWING_INLINE, DRAWING_CAPTION, DRAWING_VALUE).orElse(null);
        if (drawing != null) {
            names.add(new Name(drawing, 0.5, "drawing number"));
        }
        Integer count = sheets.isEmpty() ? null : sheets.get(0).count();
        String revision =
                value(REVISION_INLINE, REVISION_CAPTION, REVISION_VALUE).orElse(null);
        return new TitleBlock(names, count, drawing, title().orElse(null), revision, used);
    }

    private Optional<Found> numbered(Label l) {
        Matcher m = NUMBERED.matcher(upper(l));
        if (!m.matches()) {
            return Optional.empty();
        }
        boolean counted = m.group(2) != null;
        double weight = (counted ? 0.95 : 0.55) * place(l);
        if (counted) {
            used.add(l);
        }
        return weight < LEAST ? Optional.empty() : Optional.of(found(m, weight, "'" + l.text() + "'"));
    }

    private Optional<Found> captioned(Label caption) {
        if (!SHEET_CAPTION.matcher(upper(caption)).matches() && !almost(caption)) {
            return Optional.empty();
        }
        return valueOf(caption, SHEET_VALUE).flatMap(v -> {
            used.add(v);
            Matcher m = SHEET_VALUE.matcher(upper(v));
            double weight = (m.matches() && m.group(2) != null ? 0.93 : 0.85) * place(caption);
            return weight < LEAST
                    ? Optional.empty()
                    : Optional.of(found(m, weight, "'" + v.text() + "' at the caption '" + caption.text() + "'"));
        });
    }

    /** A caption in small lettering of which a letter was lost in a scan. */
    private static boolean almost(Label caption) {
        String letters = upper(caption).replaceAll("[^A-Z]", "");
        return caption.drawn()
                && SheetWords.WHOLE.stream().anyMatch(w -> IntStream.range(0, w.length())
                        .anyMatch(i -> letters.equals(w.substring(0, i) + w.substring(i + 1))));
    }

    private static Found found(Matcher m, double weight, String evidence) {
        Integer count = m.group(2) == null ? null : Integer.valueOf(m.group(2));
        return new Found(new Name(m.group(1), weight, evidence), count, weight);
    }

    /** 1 at the lower right corner, less along the bottom and right edges, little elsewhere. */
    private double place(Label l) {
        double right = l.center().xPt() / page.x1Pt();
        double down = l.center().yPt() / page.y1Pt();
        double corner = Math.min(1, Math.max(0, Math.min(right, down) - 0.3) / 0.4);
        double edge = Math.max(right, down) > 0.85 ? 0.8 : 0.3;
        return Math.max(corner, edge);
    }

    private Optional<String> value(Pattern inline, Pattern caption, Pattern value) {
        List<Label> inPlace = labels.stream()
                .filter(l -> place(l) > 0.5)
                // the revision table stands above the title block and has its own REV
                .sorted(Comparator.comparingDouble((Label l) -> -place(l))
                        .thenComparingDouble(l -> -l.box().y0Pt()))
                .toList();
        for (Label l : inPlace) {
            Matcher m = inline.matcher(upper(l));
            if (m.matches()) {
                return Optional.of(m.group(1));
            }
            if (caption.matcher(upper(l)).matches()) {
                Optional<Label> v = valueOf(l, value);
                if (v.isPresent()) {
                    used.add(v.get());
                    return v.map(Label::text);
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> title() {
        return labels.stream()
                .filter(l -> place(l) > 0.5 && TITLE_CAPTION.matcher(upper(l)).matches())
                .findFirst()
                .map(caption -> {
                    List<Label> lines = labels.stream()
                            .filter(l -> l != caption && !used.contains(l) && below(caption, l, 4.5 * l.sizePt()))
                            .filter(l ->
                                    l.sizePt() > caption.sizePt() && l.text().length() > SIZE_LETTERS)
                            .sorted(Comparator.comparingDouble(l -> l.box().y0Pt()))
                            .toList();
                    return String.join(", ", lines.stream().map(Label::text).toList());
                })
                .filter(t -> !t.isEmpty());
    }

    /** The nearest fitting label below the caption, to its right, or in its field. */
    private Optional<Label> valueOf(Label caption, Pattern value) {
        return labels.stream()
                .filter(l -> l != caption && value.matcher(upper(l)).matches())
                .filter(l -> below(caption, l, 2.5 * l.sizePt()) || rightOf(caption, l) || cells.share(caption, l))
                .min(Comparator.comparingDouble(l -> caption.box().distancePt(l.box())));
    }

    private static boolean below(Label caption, Label l, double reachPt) {
        double gap = l.box().y0Pt() - caption.box().y1Pt();
        return gap > -1
                && gap < reachPt
                && l.box().x0Pt() < caption.box().x1Pt() + 2 * l.sizePt()
                && l.box().x1Pt() > caption.box().x0Pt() - l.sizePt();
    }

    private static boolean rightOf(Label caption, Label l) {
        double gap = l.box().x0Pt() - caption.box().x1Pt();
        return gap > -1
                && gap < 4 * l.sizePt()
                && Math.abs(l.box().y1Pt() - caption.box().y1Pt()) < 0.8 * l.sizePt();
    }

    private static String upper(Label l) {
        return l.text().toUpperCase(Locale.ROOT);
    }
}
