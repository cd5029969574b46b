package linewalk.renderer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import linewalk.renderer.sheet.Book;
import linewalk.renderer.sheet.Likeness;
import linewalk.renderer.sheet.Medium;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A browser draws the SVG as another program draws the PDF. {@code tests/browser} brings what it needs. */
class BrowserTest {

    /** A browser counts 96 dots to the inch; twice as many show thin lines and small letters well. */
    private static final int DPI = 192;

    private static final int A3_WIDTH_CSS = 1588;
    private static final int A3_HEIGHT_CSS = 1123;

    /** What was compared stays here to be looked at. */
    private static final Path SEEN = Path.of("target/prints");

    @TempDir
    Path folder;

    @BeforeAll
    static void bothAreInstalled() throws Exception {
        for (String program : List.of("chromium", "pdftoppm")) {
            assumeTrue(isInstalled(program), "skipped: " + program + " is not installed; tests/browser brings it");
        }
    }

    private static boolean isInstalled(String program) throws InterruptedException {
        return run(List.of("sh", "-c", "command -v " + program)) == 0;
    }

    private PrintJob job(Look look, int rotation) {
        Bench bench = new Bench().roundTrip().drawnTo(folder.resolve("bench.pdf"), rotation);
        bench.look = look;
        return bench.job();
    }

    @ParameterizedTest
    @CsvSource({"DRAWN, 0", "CUTTINGS, 0", "CUTTINGS, 90"})
    void drawsEveryPageTheSame(Look look, int rotation) throws Exception {
        PrintJob job = job(look, rotation);
        List<BufferedImage> inBrowser = inBrowser(job);
        for (int page = 0; page < inBrowser.size(); page++) {
            Likeness likeness = Likeness.of(inBrowser.get(page), ofPdf(job, page));
            System.out.println(
                    "browser and PDF, " + look + " turned by " + rotation + ", page " + (page + 1) + ": " + likeness);
            assertThat(likeness.strokes()).isLessThan(0.001);
            assertThat(likeness.patch()).isLessThan(20);
        }
    }

    @Test
    void tellsOnePageFromAnother() throws Exception {
        PrintJob job = job(Look.DRAWN, 0);
        assertThat(Likeness.of(inBrowser(job).get(0), ofPdf(job, 1)).strokes()).isGreaterThan(0.1);
    }

    private List<BufferedImage> inBrowser(PrintJob job) throws Exception {
        List<BufferedImage> pages = new ArrayList<>();
        try (Book book = TracePrint.book(job, Medium.SVG)) {
            for (int i = 0; i < book.files(); i++) {
                Path svg = Files.createDirectories(SEEN)
                        .resolve("browser-" + job.form().look() + "-" + (i + 1) + ".svg")
                        .toAbsolutePath();
                try (var out = Files.newOutputStream(svg)) {
                    book.write(i, out);
                }
                pages.add(shot(svg));
            }
        }
        return pages;
    }

    private BufferedImage shot(Path svg) throws Exception {
        Path shot = SEEN.resolve(svg.getFileName() + ".png").toAbsolutePath();
        List<String> command = List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--hide-scrollbars",
                "--user-data-dir=" + folder.resolve("profile"),
                "--force-device-scale-factor=" + DPI / 96.0,
                "--window-size=" + A3_WIDTH_CSS + "," + A3_HEIGHT_CSS,
                "--screenshot=" + shot,
                svg.toUri().toString());
        assertThat(run(command)).as("the browser's exit").isZero();
        return ImageIO.read(shot.toFile());
    }

    private BufferedImage ofPdf(PrintJob job, int page) throws Exception {
        String name = "browser-" + job.form().look();
        Prints.print(job, name);
        String number = String.valueOf(page + 1);
        List<String> command = List.of(
                "pdftoppm",
                "-r",
                String.valueOf(DPI),
                "-f",
                number,
                "-l",
                number,
                "-png",
                "-singlefile",
                SEEN.resolve(name + ".pdf").toString(),
                SEEN.resolve(name + "-" + number).toString());
        assertThat(run(command)).isZero();
        BufferedImage drawn =
                ImageIO.read(SEEN.resolve(name + "-" + number + ".png").toFile());
        // the window is a little larger than the paper
        BufferedImage onWindow =
                new BufferedImage(A3_WIDTH_CSS * DPI / 96, A3_HEIGHT_CSS * DPI / 96, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = onWindow.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, onWindow.getWidth(), onWindow.getHeight());
        g.drawImage(drawn, 0, 0, null);
        g.dispose();
        return onWindow;
    }

    private static int run(List<String> command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                return -1;
            }
            return process.exitValue();
        } catch (IOException e) {
            return -1;
        }
    }
}
