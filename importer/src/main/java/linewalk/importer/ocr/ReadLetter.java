package linewalk.importer.ocr;

import java.util.List;

/**
 * One letter of a line, with every reading that its image allows.
 *
 * @param x0Px left edge in the crop; {@code x1Px} right edge, {@code y0Px} top, {@code y1Px} bottom
 * @param afterBlank a blank stands before it
 * @param options most likely first; likelihoods add up to at most 1
 */
public record ReadLetter(int x0Px, int y0Px, int x1Px, int y1Px, boolean afterBlank, List<Option> options) {

    /** @param text mostly one character */
    public record Option(String text, double likelihood) {}

    public ReadLetter {
        options = List.copyOf(options);
    }

    public String text() {
        return options.get(0).text();
    }

    public double likelihood() {
        return options.get(0).likelihood();
    }
}
