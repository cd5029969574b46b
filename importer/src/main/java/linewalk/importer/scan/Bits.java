package linewalk.importer.scan;

/** One bit a pixel, set where there is ink; all clear outside. */
final class Bits {

    final int width;
    final int height;
    private final int wordsPerRow;
    private final long[] words;

    Bits(int width, int height) {
        this.width = width;
        this.height = height;
        this.wordsPerRow = (width + 63) / 64;
        this.words = new long[wordsPerRow * height];
    }

    boolean isWithin(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height;
    }

    boolean get(int x, int y) {
        return isWithin(x, y) && (words[y * wordsPerRow + (x >> 6)] >>> x & 1) != 0;
    }

    void set(int x, int y) {
        words[y * wordsPerRow + (x >> 6)] |= 1L << x;
    }

    /** Sets or clears the pixels from x0 to before x1 of a row. */
    void fill(int y, int x0, int x1, boolean ink) {
        for (int x = x0; x < x1; x++) {
            int at = y * wordsPerRow + (x >> 6);
            words[at] = ink ? words[at] | 1L << x : words[at] & ~(1L << x);
        }
    }

    /** Whether all pixels from x0 to before x1 of a row have ink. */
    boolean isFull(int y, int x0, int x1) {
        return x0 >= 0 && y >= 0 && x1 <= width && y < height && nextPaper(x0, y) >= x1;
    }

    /** The first pixel of the row at or after x that has ink, else the width. */
    int nextInk(int x, int y) {
        return next(x, y, 0);
    }

    /** The first pixel of the row at or after x without ink, else the width. */
    int nextPaper(int x, int y) {
        return next(x, y, -1L);
    }

    private int next(int x, int y, long flip) {
        if (x >= width) {
            return width;
        }
        int word = x >> 6;
        long bits = (words[y * wordsPerRow + word] ^ flip) & (-1L << x);
        while (bits == 0) {
            if (++word == wordsPerRow) {
                return width;
            }
            bits = words[y * wordsPerRow + word] ^ flip;
        }
        return Math.min(width, (word << 6) + Long.numberOfTrailingZeros(bits));
    }
}
