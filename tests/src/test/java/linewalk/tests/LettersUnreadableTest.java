package linewalk.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import linewalk.samples.DemoSet;
import linewalk.samples.style.DraftingStyle;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Drawn letters where what reads them is not there: one sentence, the rest of the page all the same, and an end of its own
 * accord. Native code ends its process where it fails, so each case runs in one of its own, without anything on the path.
 */
class LettersUnreadableTest {

    @TempDir
    static Path folder;

    private static Path pdf;

    @BeforeAll
    static void draw() throws IOException {
        DemoSet.write(folder.resolve("drawn"), DraftingStyle.named("iso-part"));
        pdf = folder.resolve("two.pdf");
        try (PDDocument whole =
                Loader.loadPDF(folder.resolve("drawn/link-span.pdf").toFile())) {
            while (whole.getNumberOfPages() > 2) {
                whole.removePage(2);
            }
            whole.save(pdf.toFile());
        }
    }

    private record Ended(int status, String out, String err) {}

    private static Ended imported(String name, String classPath, String... options) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(options));
        command.addAll(List.of("-cp", classPath, "linewalk.app.Main", "import", pdf.toString(), "--into"));
        command.add(folder.resolve(name).toString());
        ProcessBuilder run = new ProcessBuilder(command);
        run.environment().clear();
        run.environment().put("PATH", folder.toString());
        File out = folder.resolve(name + ".out").toFile();
        File err = folder.resolve(name + ".err").toFile();
        Process process = run.redirectOutput(out).redirectError(err).start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return new Ended(process.exitValue(), text(out), text(err));
    }

    private static String text(File file) throws IOException {
        return Files.readString(file.toPath(), StandardCharsets.UTF_8);
    }

    private static String classPath() {
        return System.getProperty("java.class.path");
    }

    private static void saysOnce(Ended ended, String reason) {
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).contains("2 sheets, 0 references").doesNotContain(" 0 components");
        assertThat(ended.err().lines()).hasSize(1);
        assertThat(ended.err())
                .startsWith("linewalk: 2 of 2 pages were not read to the end")
                .contains(reason);
    }

    @Test
    void nothingOfTheMachineIsNeeded() throws Exception {
        Ended ended = imported("whole", classPath());

        assertThat(ended.status()).isZero();
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out()).doesNotContain(" 0 references");
    }

    @Test
    void nativesThatAreNotThereAreOneSentence() throws Exception {
        saysOnce(
                imported("natives", classPath(), "-Dorg.bytedeco.javacpp.platform=none-such"),
                "the libraries that read letters cannot be loaded on this machine");
    }

    @Test
    void languageDataThatIsNoneIsOneSentence() throws Exception {
        Path other = Files.createDirectories(folder.resolve("other/tessdata"));
        Files.writeString(other.resolve("eng.traineddata"), "no language");

        saysOnce(
                imported("language", other.getParent() + File.pathSeparator + classPath()),
                "the letter reader does not accept its language data");
    }
}
