package linewalk.renderer.card;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads pressures out of settings as they stand on drawings: "210 bar", "3000 psi", "45 cm3 170 bar". */
final class Pressures {

    /** By definition of pound, inch and standard gravity: 1 psi is 6894.757 Pa. */
    private static final double BAR_PER_PSI = 0.06894757;

    private static final Pattern PRESSURE = Pattern.compile(
            "(?<!\\d)(?<!\\d[.,])(\\d+(?:[.,]\\d+)*)\\s*(bar|psi|mpa|kpa)\\b", Pattern.CASE_INSENSITIVE);
    /** 3,000 bar is three thousand or three, as the drafter's country has it; so are 3.000 and, cut in two, 3 000. */
    private static final Pattern AMBIGUOUS = Pattern.compile("\\d{1,3}([.,]\\d{3})+");

    private static final Pattern CUT = Pattern.compile("(?<![\\p{L}\\d])\\d{1,3}\\s\\d{3}\\s*(bar|psi|mpa|kpa)\\b");
    /** Pounds are written in countries where the comma parts thousands. */
    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}(,\\d{3})+");

    private Pressures() {}

    /** The highest pressure named, in bar; empty where there is none or a number can be read in two ways. */
    static OptionalDouble bar(String setting) {
        if (CUT.matcher(setting.toLowerCase(Locale.ROOT)).find()) {
            return OptionalDouble.empty();
        }
        Matcher m = PRESSURE.matcher(setting);
        OptionalDouble most = OptionalDouble.empty();
        while (m.find()) {
            OptionalDouble number = number(m.group(1), m.group(2).equalsIgnoreCase("psi"));
            if (number.isEmpty()) {
                return number;
            }
            most = OptionalDouble.of(Math.max(number.getAsDouble() * barPer(m.group(2)), most.orElse(0)));
        }
        return most;
    }

    private static OptionalDouble number(String text, boolean isPounds) {
        if (isPounds && THOUSANDS.matcher(text).matches()) {
            return OptionalDouble.of(Double.parseDouble(text.replace(",", "")));
        }
        return AMBIGUOUS.matcher(text).matches() || !text.matches("\\d+([.,]\\d+)?")
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(text.replace(',', '.')));
    }

    private static double barPer(String unit) {
        return switch (unit.toLowerCase(Locale.ROOT)) {
            case "psi" -> BAR_PER_PSI;
            case "mpa" -> 10;
            case "kpa" -> 0.01;
            default -> 1;
        };
    }

    /** "210 bar", or "3000 psi = 207 bar" where the setting has another unit. */
    static String said(String setting, double bar) {
        return setting.toLowerCase(Locale.ROOT).contains("bar") ? setting : setting + " = " + words(bar);
    }

    /** "210 bar", "2.5 bar". */
    static String words(double bar) {
        double rounded = bar >= 100 ? Math.rint(bar) : Math.rint(bar * 10) / 10;
        String number = rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
        return number + " bar";
    }
}
