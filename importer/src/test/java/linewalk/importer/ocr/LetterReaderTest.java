package linewalk.importer.ocr;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines of print in, letters with their likelihoods out. */
class LetterReaderTest {

    @Test
    void printIsRead() {
        try (LetterReader reader = LetterReader.lazy()) {
            assertThat(text(reader.line(crop("SHEET 3 OF 8")))).isEqualTo("SHEET 3 OF 8");
        }
    }

    @Test
    void lettersStandFromLeftToRightInsideTheCrop() {
        Crop crop = crop("MOTOR");
        try (LetterReader reader = LetterReader.lazy()) {
            List<ReadLetter> letters = reader.line(crop);
            assertThat(letters).hasSize(5);
            assertThat(letters).extracting(ReadLetter::x0Px).isSorted();
            assertThat(letters).allMatch(l -> l.x1Px() <= crop.widthPx() && l.y1Px() <= crop.heightPx());
        }
    }

    @Test
    void likelihoodsAreShares() {
        try (LetterReader reader = LetterReader.lazy()) {
            assertThat(reader.line(crop("3/B4"))).isNotEmpty().allSatisfy(l -> {
                double sum = l.options().stream()
                        .mapToDouble(ReadLetter.Option::likelihood)
                        .sum();
                assertThat(sum).isBetween(0.0, 1.0 + 1e-9);
            });
        }
    }

    @Test
    void nothingIsReadFromBlankPaper() {
        byte[] white = new byte[200 * 60];
        Arrays.fill(white, (byte) 255);
        try (LetterReader reader = LetterReader.lazy()) {
            assertThat(reader.line(new Crop(200, 60, white))).isEmpty();
        }
    }

    /** To ask the engine about a line in which it saw nothing ends the JVM, and this test with it. */
    @ParameterizedTest
    @CsvSource({"1, 1, 1", "2, 60, 1", "200, 3, 2", "200, 60, 2", "200, 60, 9", "60, 200, 60", "400, 60, 400"})
    void cropsWithoutLettersEndNothing(int widthPx, int heightPx, int inkPx) {
        try (LetterReader reader = LetterReader.lazy()) {
            for (int grey : new int[] {255, 128, 0}) {
                byte[] paper = new byte[widthPx * heightPx];
                Arrays.fill(paper, (byte) 255);
                Arrays.fill(paper, 0, Math.min(inkPx, paper.length), (byte) grey);
                reader.line(new Crop(widthPx, heightPx, paper));
            }
            assertThat(text(reader.line(crop("PUMP")))).isEqualTo("PUMP");
        }
    }

    @Test
    void threadsReadSideBySideEachWithItsOwnEngine() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            List<Future<String>> both = pool.invokeAll(List.of(() -> many("RETURN LINE"), () -> many("DRAIN")));
            assertThat(both.get(0).get()).isEqualTo("RETURN LINE");
            assertThat(both.get(1).get()).isEqualTo("DRAIN");
        } finally {
            pool.shutdown();
        }
    }

    private static String many(String print) {
        String last = "";
        try (LetterReader reader = LetterReader.lazy()) {
            for (int i = 0; i < 20; i++) {
                last = text(reader.line(crop(print)));
            }
        }
        return last;
    }

    private static String text(List<ReadLetter> letters) {
        return letters.stream().map(l -> (l.afterBlank() ? " " : "") + l.text()).collect(Collectors.joining());
    }

    private static Crop crop(String print) {
        BufferedImage image = new BufferedImage(40 + 36 * print.length(), 80, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setColor(Color.BLACK);
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 46));
        g.drawString(print, 20, 58);
        g.dispose();
        return Crop.of(image);
    }
}
