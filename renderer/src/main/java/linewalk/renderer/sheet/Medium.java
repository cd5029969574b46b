package linewalk.renderer.sheet;

import java.io.IOException;
import java.time.LocalDate;

/**
 * What a print is written as.
 *
 * @param dpi dots per inch of a picture, {@value #LEAST_DPI} to {@value #MOST_DPI}; of no meaning for the others
 */
public record Medium(Format format, int dpi) {

    public static final int LEAST_DPI = 50;
    public static final int MOST_DPI = 600;
    public static final int USUAL_DPI = 150;
    public static final Medium PDF = new Medium(Format.PDF, USUAL_DPI);
    public static final Medium SVG = new Medium(Format.SVG, USUAL_DPI);

    /** The kinds of file; each one's name is the ending of its files. */
    public enum Format {
        PDF,
        SVG,
        PNG
    }

    public Medium {
        if (dpi < LEAST_DPI || dpi > MOST_DPI) {
            throw new IllegalArgumentException(dpi + " dpi");
        }
    }

    public static Medium png(int dpi) {
        return new Medium(Format.PNG, dpi);
    }

    /** An empty book; the libraries of one format are not loaded for another. */
    public Book book(double widthPt, double heightPt, String title, LocalDate date) throws IOException {
        return switch (format) {
            case PDF -> new PdfBook(widthPt, heightPt, title, date);
            case SVG -> new SvgBook(widthPt, heightPt, title);
            case PNG -> new PngBook(new PdfBook(widthPt, heightPt, title, date), dpi, title);
        };
    }
}
