package linewalk.app;

import java.nio.file.Path;
import java.util.Locale;
import linewalk.drawing.UserError;
import linewalk.renderer.sheet.Medium;

/** Where a print goes, and as what. Its further files get -2, -3, ... */
record PrintFile(Path path, Medium medium) {

    /**
     * @param path its ending tells the format
     * @param dpi null where it was not asked for
     * @throws UserError the ending is of no format, or the resolution of no use
     */
    static PrintFile of(Path path, Integer dpi) {
        Medium.Format format = format(path);
        if (dpi == null) {
            return new PrintFile(path, new Medium(format, Medium.USUAL_DPI));
        }
        if (format != Medium.Format.PNG) {
            throw new UserError("--dpi is for pictures, and " + path + " is " + format
                    + ", which has no dots: name a file such as " + bare(path) + ".png, or leave --dpi out");
        }
        if (dpi < Medium.LEAST_DPI || dpi > Medium.MOST_DPI) {
            throw new UserError("--dpi wants a number of " + Medium.LEAST_DPI + " to " + Medium.MOST_DPI);
        }
        return new PrintFile(path, Medium.png(dpi));
    }

    private static Medium.Format format(Path path) {
        String name = path.getFileName() == null ? "" : path.getFileName().toString();
        for (Medium.Format f : Medium.Format.values()) {
            if (name.toUpperCase(Locale.ROOT).endsWith("." + f) && name.length() > 4) {
                return f;
            }
        }
        throw new UserError("prints are PDF, SVG or PNG files: name one such as " + path + ".pdf");
    }

    private static String bare(Path path) {
        String text = path.toString();
        return text.substring(0, text.lastIndexOf('.'));
    }

    boolean isPdf() {
        return medium.format() == Medium.Format.PDF;
    }

    /** @param n from 1 */
    Path numbered(int n) {
        String name = path.getFileName().toString();
        int dot = name.lastIndexOf('.');
        return n == 1 ? path : path.resolveSibling(name.substring(0, dot) + "-" + n + name.substring(dot));
    }
}
