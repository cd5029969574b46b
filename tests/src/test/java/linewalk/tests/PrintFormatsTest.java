package linewalk.tests;

import static linewalk.tests.Run.fine;
import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One question, asked for another kind of file. */
class PrintFormatsTest {

    @TempDir
    static Path folder;

    private static Path demo;

    @TempDir
    Path prints;

    @BeforeAll
    static void writeTheDemo() {
        demo = folder.resolve("demo");
        fine("demo", demo);
    }

    @BeforeEach
    void nothingIsPrintedYet() throws IOException {
        assertThat(names()).isEmpty();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(prints)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    /** Without the typeface and the tags. */
    private String words(String svg) throws IOException {
        return Files.readString(prints.resolve(svg))
                .replaceAll("(?s)<style>.*?</style>|<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    @Test
    void svgIsAFileForEachPage() throws IOException {
        fine("trace", demo, "--from", "0P1", "--paper", "A4", "--out", prints.resolve("rest.svg"));
        assertThat(names()).startsWith("rest-2.svg").endsWith("rest.svg").hasSizeGreaterThan(1);
        int pages = names().size();
        assertThat(words("rest.svg")).contains("page 1 of " + pages);
        assertThat(words("rest-2.svg")).contains("page 2 of " + pages);
    }

    @Test
    void pngHasTheDotsAskedFor() throws IOException {
        fine("trace", demo, "--from", "0P1", "--dpi", "75", "--turn", "portrait", "--out", prints.resolve("rest.png"));
        BufferedImage page = ImageIO.read(prints.resolve("rest.png").toFile());
        assertThat(page.getWidth()).isEqualTo(877);
        assertThat(page.getHeight()).isEqualTo(1240);
    }

    @Test
    void allStepsFillOneRowOfPictures() throws IOException {
        fine("trace", demo, "--from", "0P1", "--all-steps", "--paper", "A1", "--out", prints.resolve("cycle.svg"));
        assertThat(names()).contains("cycle.svg", "cycle-8.svg");
    }

    @Test
    void aPageLeftOfALongerPrintIsTold() throws IOException {
        Files.writeString(prints.resolve("rest-2.svg"), "an older page");
        Run run = fine("trace", demo, "--from", "0P1", "--paper", "A0", "--out", prints.resolve("rest.svg"));
        assertThat(names()).containsExactly("rest-2.svg", "rest.svg");
        assertThat(run.err()).contains("rest-2.svg is of an earlier print and no page of this one, which has 1");
    }

    @Test
    void whatCannotBeMeantIsRefused() throws IOException {
        Refusal.isWrongUse(linewalk("trace", demo, "--from", "0P1", "--dpi", "300"), "--out path.png");
        Path pdf = prints.resolve("rest.pdf");
        Refusal.isWrongUse(linewalk("trace", demo, "--from", "0P1", "--out", pdf, "--dpi", "300"), "has no dots");
        Path png = prints.resolve("rest.png");
        Refusal.isWrongUse(linewalk("trace", demo, "--from", "0P1", "--out", png, "--dpi", "601"), "50 to 600");
        Refusal.isWrongUse(linewalk("trace", demo, "--from", "0P1", "--out", png, "--dpi", "many"), "--dpi");
        assertThat(names()).isEmpty();
    }
}
