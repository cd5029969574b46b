package linewalk.importer.lettering;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.Flow;
import linewalk.drawing.ReferenceReading.Says;
import linewalk.drawing.Target;
import linewalk.drawing.Zone;

/**
 * The forms in which references are printed. IEC 61082-1 shows both orders of a location, row letter first ({@code
 * /2.B3}) and column first ({@code L1/1.18A}); drawings of the wild add words, brackets, other separators, several
 * targets and names glued in front. What a text may mean in two ways is given with both readings.
 */
public final class ReferenceGrammar {

    /**
     * What a text says.
     *
     * @param form the text with its letters and numbers taken out
     * @param label a name that is part of the text, or null
     * @param words it holds words such as SHEET or ZONE
     * @param zoned a zone is named
     */
    public record Parsed(String form, List<Says> readings, String label, boolean words, boolean zoned) {
        public Parsed {
            readings = List.copyOf(readings);
        }

        Parsed with(List<Says> others) {
            return new Parsed(form, others, label, words, zoned);
        }
    }

    private static final String LETTERS_FIRST = "[A-Z]{1,2}-?\\d{1,2}";
    private static final String DIGITS_FIRST = "\\d{1,2}-?[A-Z]";
    private static final String ZONE = "(?:" + LETTERS_FIRST + "|" + DIGITS_FIRST + ")";
    private static final String SHEET = "(?:\\d{1,4}[A-Z]?|[A-Z]{1,3}-?\\d{1,4}|[A-Z0-9]{1,6}(?:-[A-Z0-9]{1,6}){1,3})";
    private static final String SHEET_WORD = SheetWords.REFERRED;
    private static final String ZONE_WORD = "(?:ZONE|ZONA|ZN|Z|FELD|STREFA|P[OÓ]LE|AT)\\.?";
    /** Words that are letters or syllables too: they lead where the word for a sheet follows. */
    private static final String ONWARD =
            "TO|ZU|NACH|VERS|HACIA|PARA|NAAR|TILL|(?:A|AL|ALLA|DO|NA)(?= ?" + SHEET_WORD + ")";

    private static final String HITHER =
            "FROM|FR|FRM|VON|AUS|DEPUIS|DESDE|FR[AÅ]N|(?:DE|DA|DAL|DALLA|VAN|Z)(?= ?" + SHEET_WORD + ")";
    private static final Pattern LEAD = Pattern.compile("^(?:(?:SEE|SIEHE|VOIR|VER|VEDI|ZIE|VIZ|SE|" + ONWARD + "|"
            + HITHER + "|CONT(?:INUE|INUED|D|'D)?\\.?|GOES|COMES|ON|AT)\\b[ :.]*)+");
    private static final Pattern LEADS_ON = Pattern.compile("^(?:" + ONWARD + ") .*");
    private static final Pattern COMES_FROM = Pattern.compile("^(?:" + HITHER + ") .*");
    private static final Pattern ARROWS =
            Pattern.compile("[\\u2190-\\u21FF\\u25B2-\\u25C5\\u27F5-\\u27F8]|<-+|-+>|<<|>>");
    private static final Pattern PLANT = Pattern.compile("^([=+][A-Z0-9=+.-]+)/(.*)$");

    private static final Pattern SHEET_ZONE =
            Pattern.compile("(" + SHEET + ")(?: ?[./:] ?| - | ?, ?|-)[(\\[]?(" + ZONE + ")[)\\]]?");
    private static final Pattern LETTERED_NUMBER = Pattern.compile("[A-Z]{1,3}(\\d{1,3})");

    /** How likely letters before a number are no part of the sheet's name; the set's sheets decide. */
    private static final double ABBREVIATED = 0.2;

    private static final Pattern BLANK_BETWEEN = Pattern.compile("(\\d{1,3}) (" + ZONE + ")");
    private static final Pattern SHEET_BRACKETED =
            Pattern.compile("[(\\[](" + SHEET + ")[)\\]] ?[./-]? ?(" + ZONE + ")");
    private static final Pattern GLUED = Pattern.compile("(\\d{1,2})([A-Z]\\d{1,2})");
    private static final Pattern LINE_NUMBER =
            Pattern.compile("^(.*\\S)[ ,]+(LINE ?(?:NO\\.? ?)?[A-Z]{0,3}-?\\d{1,4})$");
    private static final Pattern ZONE_SHEET = Pattern.compile("(" + ZONE + ") ?[/:] ?(" + SHEET + ")");
    private static final Pattern NAMED = Pattern.compile("(\\S.*?\\S|\\S)/(" + SHEET + ")[.:](" + ZONE + ")");
    private static final Pattern WORDED = Pattern.compile(
            SHEET_WORD + " ?(" + SHEET + ")[,;:. /-]*(?:" + ZONE_WORD + " ?)?[(\\[]?(" + ZONE + ")[)\\]]?");
    /** Without blanks the word for the zone is none of its letters, nor of the sheet's: {@code SHT13ZNC-1}. */
    private static final Pattern BOTH_WORDED =
            Pattern.compile(SHEET_WORD + " ?(" + SHEET + ")[,;:. /-]*" + ZONE_WORD + " ?[(\\[]?(" + ZONE + ")[)\\]]?");

    private static final Pattern ZONE_WORDED = Pattern.compile(
            "(?:" + ZONE_WORD + " ?)?(" + ZONE + ")[,;:. /-]*(?:ON )?" + SHEET_WORD + " ?(" + SHEET + ")");
    private static final Pattern WORDED_SHEET = Pattern.compile(SHEET_WORD + " ?(" + SHEET + ")");
    /** A line's name before words for the sheet, or after them where a sign stands between: {@code P1.2 - SH. 3 (D7)}. */
    private static final String NAME = "[A-Z0-9](?:[A-Z0-9.+-]{0,8}[A-Z0-9])?";

    private static final Pattern NAME_WORDED = Pattern.compile("(" + NAME + ")(?: ?[-:,;/] ?| )(" + SHEET_WORD + ".+)");
    private static final Pattern WORDED_NAME = Pattern.compile("(" + SHEET_WORD + ".+?)(?: - | ?[:,;] )(" + NAME + ")");
    private static final Pattern DRAWING_NUMBER = Pattern.compile("[A-Z]{2,6}[-.]\\d{4,}(?:-\\d+)*");
    private static final Pattern SEVERAL = Pattern.compile(" ?[/,;&+] | [/,;&+] ?|[,;&]");

    private static final Pattern GLUED_SEVERAL = Pattern.compile(" ?[/,;&+] ?| ");

    private static final Pattern LEAD_BETWEEN = Pattern.compile(" (?=(?:SEE|" + ONWARD + "|" + HITHER + ") )");

    /** That of a sentence, or a speck of a scan. */
    private static final Pattern STOP = Pattern.compile("[.,]$");

    private static final Pattern BLANKS = Pattern.compile(" ");

    private final List<Pattern> own;

    /** What the first word says of the flow, in the languages in which drawings of the trade are common. */
    public static Flow flow(String text) {
        String upper = text.toUpperCase(Locale.ROOT);
        if (COMES_FROM.matcher(upper).matches()) {
            return Flow.IN;
        }
        return LEADS_ON.matcher(upper).matches() ? Flow.OUT : Flow.UNKNOWN;
    }

    /** @param ownPatterns the set's own forms, see {@link linewalk.drawing.SetSettings#patterns} */
    public ReferenceGrammar(List<String> ownPatterns) {
        own = ownPatterns.stream().map(Pattern::compile).toList();
    }

    /** Empty where the text as a whole is no reference. */
    public Optional<Parsed> parse(String printed) {
        String text = ARROWS.matcher(printed).replaceAll(" ").strip().replaceAll("\\s+", " ");
        Optional<Parsed> byOwn = byOwnPatterns(text);
        if (byOwn.isPresent()) {
            return byOwn;
        }
        String upper = STOP.matcher(text.toUpperCase(Locale.ROOT)).replaceFirst("");
        String plain = LEAD.matcher(upper).replaceFirst("");
        boolean led = plain.length() < upper.length();
        if (plain.startsWith("(") && plain.endsWith(")") || plain.startsWith("[") && plain.endsWith("]")) {
            plain = plain.substring(1, plain.length() - 1).strip();
        }
        if (plain.startsWith("/")) {
            plain = plain.substring(1);
        }
        Matcher numbered = LINE_NUMBER.matcher(plain);
        String number = numbered.matches() ? numbered.group(2) : null;
        String bare = number == null ? plain : numbered.group(1);
        return parsePlain(bare)
                .map(p -> new Parsed(
                        (led ? "w" : "") + p.form(),
                        p.readings(),
                        number != null ? number : p.label(),
                        led || p.words(),
                        p.zoned()));
    }

    /** Inside a flag, sheet and zone may be printed without anything between: {@code 3H4}. */
    public Optional<Parsed> glued(String text) {
        List<Target> targets = new ArrayList<>();
        for (String part : GLUED_SEVERAL.split(text.strip().toUpperCase(Locale.ROOT))) {
            Matcher m = GLUED.matcher(part);
            if (!m.matches()) {
                return Optional.empty();
            }
            targets.add(target(m.group(1), m.group(2)));
        }
        return Optional.of(new Parsed(form(text), List.of(new Says(targets, 1)), null, false, true));
    }

    /** A drawing number beside a flag with a number or letter names the sheet that the line goes on to. */
    public Optional<Parsed> drawingNumber(String text) {
        return DRAWING_NUMBER.matcher(text).matches()
                ? Optional.of(new Parsed("D", List.of(new Says(List.of(new Target(text, null)), 1)), null, true, false))
                : Optional.empty();
    }

    private Optional<Parsed> parsePlain(String text) {
        Matcher plant = PLANT.matcher(text);
        if (plant.matches()) {
            String name = plant.group(1);
            return single(plant.group(2))
                    .map(p -> new Parsed(name.charAt(0) + p.form(), p.readings(), null, p.words(), p.zoned()));
        }
        Optional<Parsed> one = single(text);
        if (one.isPresent()) {
            return one;
        }
        Optional<Parsed> several = several(text);
        return several.isPresent() ? several : named(text);
    }

    private Optional<Parsed> byOwnPatterns(String text) {
        for (Pattern p : own) {
            Matcher m = p.matcher(text);
            if (m.matches()) {
                Zone zone = group(m, "zone").flatMap(Zone::parse).orElse(null);
                Target target = new Target(m.group("sheet"), zone);
                String label = group(m, "label").orElse(null);
                return Optional.of(new Parsed(
                        "own" + own.indexOf(p), List.of(new Says(List.of(target), 1)), label, true, zone != null));
            }
        }
        return Optional.empty();
    }

    private static Optional<String> group(Matcher m, String name) {
        return m.pattern().pattern().contains("(?<" + name + ">")
                ? Optional.ofNullable(m.group(name))
                : Optional.empty();
    }

    private static Optional<Parsed> single(String text) {
        Matcher m = BOTH_WORDED.matcher(text);
        if (!m.matches()) {
            m = WORDED.matcher(text);
        }
        if (m.matches()) {
            return Optional.of(parsed(text, Map.of(target(m.group(1), m.group(2)), 1.0), true));
        }
        m = ZONE_WORDED.matcher(text);
        if (m.matches()) {
            return Optional.of(parsed(text, Map.of(target(m.group(2), m.group(1)), 1.0), true));
        }
        m = WORDED_SHEET.matcher(text);
        if (m.matches()) {
            return Optional.of(parsed(text, Map.of(new Target(m.group(1), null), 1.0), true));
        }
        return compact(text);
    }

    private static Optional<Parsed> compact(String text) {
        Map<Target, Double> targets = new LinkedHashMap<>();
        for (Pattern sheetFirst : List.of(SHEET_ZONE, BLANK_BETWEEN, SHEET_BRACKETED)) {
            Matcher m = sheetFirst.matcher(text);
            if (m.matches()) {
                targets.put(target(m.group(1), m.group(2)), 1.0);
            }
        }
        Matcher m = ZONE_SHEET.matcher(text);
        if (m.matches()) {
            targets.put(target(m.group(2), m.group(1)), 1.0);
        }
        if (targets.isEmpty()) {
            return Optional.empty();
        }
        // both orders fit: the sheet first is the commoner one
        targets.replaceAll((t, l) -> targets.size() == 1 ? 1.0 : 0.5);
        return Optional.of(parsed(text, targets.size() == 1 ? orAbbreviated(targets) : targets, false));
    }

    /** Letters before a sheet's number may be the word for it, cut short: {@code F3} is sheet 3, a folio. */
    private static Map<Target, Double> orAbbreviated(Map<Target, Double> one) {
        Target t = one.keySet().iterator().next();
        Matcher m = LETTERED_NUMBER.matcher(t.sheet());
        if (!m.matches()) {
            return one;
        }
        Map<Target, Double> both = new LinkedHashMap<>();
        both.put(t, 1 - ABBREVIATED);
        both.put(new Target(m.group(1), t.zone()), ABBREVIATED);
        return both;
    }

    /** Separated by a sign, by the word that leads each, or, where each is a single word, by blanks. */
    private static Optional<Parsed> several(String text) {
        for (Pattern between : List.of(SEVERAL, LEAD_BETWEEN, BLANKS)) {
            String[] parts = between.split(text);
            Optional<Parsed> all = parts.length < 2 ? Optional.empty() : several(text, parts);
            if (all.isPresent()) {
                return all;
            }
        }
        return Optional.empty();
    }

    private static Optional<Parsed> several(String text, String[] parts) {
        List<Target> targets = new ArrayList<>();
        boolean words = false;
        for (String part : parts) {
            Optional<Parsed> one =
                    single(LEAD.matcher(part.strip()).replaceFirst("").replaceFirst("^/", ""));
            if (one.isEmpty()) {
                return Optional.empty();
            }
            words |= one.get().words();
            targets.addAll(one.get().readings().get(0).targets());
        }
        boolean zoned = targets.stream().allMatch(t -> t.zone() != null);
        return Optional.of(new Parsed(form(text), List.of(new Says(targets, 1)), null, words, zoned));
    }

    private static Optional<Parsed> named(String text) {
        Matcher before = NAME_WORDED.matcher(text);
        if (before.matches() && hasLetter(before.group(1))) {
            return worded(before.group(2), before.group(1));
        }
        Matcher after = WORDED_NAME.matcher(text);
        if (after.matches() && hasLetter(after.group(2))) {
            return worded(after.group(1), after.group(2));
        }
        Matcher m = NAMED.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        Target target = target(m.group(2), m.group(3));
        String rest = text.substring(m.start(2));
        return Optional.of(
                new Parsed("x/" + form(rest), List.of(new Says(List.of(target), 1)), m.group(1), false, true));
    }

    private static boolean hasLetter(String name) {
        return name.chars().anyMatch(Character::isLetter);
    }

    private static Optional<Parsed> worded(String text, String name) {
        return single(text)
                .filter(p -> p.words() && p.zoned())
                .map(p -> new Parsed("n" + p.form(), p.readings(), name, true, true));
    }

    private static Parsed parsed(String text, Map<Target, Double> targets, boolean words) {
        List<Says> readings = new ArrayList<>();
        targets.forEach((t, likelihood) -> readings.add(new Says(List.of(t), likelihood)));
        boolean zoned = targets.keySet().stream().anyMatch(t -> t.zone() != null);
        return new Parsed(form(text), readings, null, words, zoned);
    }

    private static Target target(String sheet, String zone) {
        return new Target(sheet.strip(), Zone.parse(zone).orElseThrow());
    }

    /** {@code 2.E11} and {@code 3.B4} are of one form. */
    private static String form(String text) {
        return text.replaceAll("\\d+", "9").replaceAll("[A-Z]+", "A").replaceAll("\\s+", "");
    }
}
