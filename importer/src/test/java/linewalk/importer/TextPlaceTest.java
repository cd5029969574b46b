package linewalk.importer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import linewalk.drawing.Box;
import linewalk.importer.lettering.Label;
import linewalk.importer.lettering.LabelBuilder;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Places of words against another reader: {@code pdftotext -bbox} of poppler-utils. Skipped where it is not installed. */
class TextPlaceTest {

    private static final Pattern WORD = Pattern.compile(
            "<word xMin=\"([\\d.-]+)\" yMin=\"([\\d.-]+)\" xMax=\"([\\d.-]+)\" yMax=\"([\\d.-]+)\">(.*?)</word>");

    @TempDir
    Path folder;

    private static Drawn drawing() {
        return Drawn.page(842, 595)
                .text(100, 80, "MAIN LIFT")
                .text(500, 300, 270, "UP2.B4")
                .text(520, 300, 90, "DOWN-7")
                .lettering(14)
                .text(60, 560, "SHEET 3 OF 8")
                .lettering(6)
                .text(780, 40, "0V12");
    }

    static Stream<Arguments> options() {
        return Stream.of(0, 90, 180, 270)
                .flatMap(t -> Stream.of(
                        option("turned " + t, d -> d.turned(t)),
                        option("turned " + t + ", cropped", d -> d.turned(t).cropAt(70, 25)),
                        option("turned " + t + ", single glyphs", d -> d.turned(t)
                                .glyphByGlyph())));
    }

    private static Arguments option(String name, UnaryOperator<Drawn> option) {
        return Arguments.of(name, option);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("options")
    void wordsStandWhereAnotherReaderSeesThem(String name, UnaryOperator<Drawn> option) throws Exception {
        Drawn d = option.apply(drawing());
        List<Label.Word> other = otherReader(d.pdf());

        List<Label.Word> ours = LabelBuilder.labels(d.marks().glyphs()).stream()
                .flatMap(l -> l.words().stream())
                .toList();

        assertThat(ours).hasSize(9);
        assertThat(ours).allSatisfy(w -> assertThat(other)
                .filteredOn(o -> o.text().equals(w.text()))
                .anySatisfy(o -> assertThat(o.box().center().distancePt(w.box().center()))
                        .isLessThan(2)));
    }

    private List<Label.Word> otherReader(byte[] pdf) throws IOException, InterruptedException {
        Path file = folder.resolve("case.pdf");
        Path out = folder.resolve("case.html");
        Files.write(file, pdf);
        assumeTrue(run(file, out), "pdftotext is not installed (package poppler-utils)");
        List<Label.Word> words = new ArrayList<>();
        Matcher m = WORD.matcher(Files.readString(out, StandardCharsets.UTF_8));
        while (m.find()) {
            double[] at = new double[4];
            for (int i = 0; i < 4; i++) {
                at[i] = Double.parseDouble(m.group(i + 1));
            }
            words.add(new Label.Word(m.group(5), new Box(at[0], at[1], at[2], at[3])));
        }
        return words;
    }

    /** False where the tool is not there; a tool that fails is a failure. */
    private static boolean run(Path file, Path out) throws InterruptedException {
        try {
            Process tool = new ProcessBuilder("pdftotext", "-bbox", "-cropbox", file.toString(), out.toString())
                    .redirectErrorStream(true)
                    .start();
            assertThat(tool.waitFor()).isZero();
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
