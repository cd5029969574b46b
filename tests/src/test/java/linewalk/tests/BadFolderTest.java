package linewalk.tests;

import static linewalk.tests.Run.linewalk;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A set folder that cannot be used or written, and files in it that people got wrong: named by line and column. */
class BadFolderTest {

    @TempDir
    Path folder;

    private Path set;

    @BeforeEach
    void tag() {
        set = TaggedSet.tagged(folder);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "set.json  | {'sources': ['a.pdf',           | line 1",
                "set.json  | {'sources': 7}                  | line 1, column 13",
                "set.json  | {'colour': 'red'}               | colour",
                "set.json  |                                 | set.json",
                "tags.json | {'tags': [{'tag': 'shee'}]}     | shee",
                "tags.json | {'tags': [%n  {'tag': 'sheet' 'page': 1}]} | line 2, column 1",
                "tags.json | {'tags': [{'tag': 'sheet', 'page': 'one'}]} | page",
                "tags.json | {'tags': [{'tag': 'sheet', 'leaf': 1}]} | leaf",
                "tags.csv  | tag,page,name%nsheet,1,10%nsheet,two,20 | line 3, column 2 (page)",
                "tags.csv  | tag,page,name%nshoe,1,10        | line 2, column 1 (tag)",
                "cycle.csv | step,Y1,Y2%n1,0,X%n2,maybe,1    | line 3, column 2 (Y1)",
                "cycle.csv | step,Y1%n,1                     | line 2, column 1 (step)",
                "parts.csv | tag,description%n,A pump        | line 2, column 1 (tag)"
            })
    void malformedFilesAreNamedByLineAndColumn(String name, String text, String where) throws IOException {
        Path file = set.resolve(name);
        Files.writeString(file, text == null ? "" : text.replace('\'', '"').replace("%n", "\n"));
        Map<String, String> before = Refusal.files(set);
        for (List<Object> command :
                List.<List<Object>>of(List.of("check", set), List.of("trace", set, "--from", "P1"))) {
            Refusal.isWrongUse(linewalk(command.toArray()), name, where);
        }
        assertThat(Refusal.files(set)).as("nothing is changed").isEqualTo(before);
    }

    @Test
    void noFolderAndNoSet() {
        Refusal.isWrongUse(linewalk("check", folder.resolve("gone")), "gone", "linewalk import");
        Refusal.isWrongUse(linewalk("export", folder), "no set.json", "linewalk import");
    }

    @Test
    void aSourceThatIsGone() throws IOException {
        Files.delete(folder.resolve("press.pdf"));
        Refusal.isWrongUse(linewalk("check", set), "press.pdf");
    }

    /** Permissions do not stop every user; a file where a folder should be stops all. */
    @Test
    void aSetThatCannotBeWritten() {
        Path file = folder.resolve("press.pdf");
        Map<String, String> before = Refusal.files(folder);
        Refusal.isWrongUse(linewalk("import", file, "--into", file.resolve("set")), "cannot write");
        Refusal.isWrongUse(linewalk("demo", file.resolve("demo")), "cannot write");
        Refusal.isWrongUse(linewalk("demo", file), file.toString());
        assertThat(Refusal.files(folder)).isEqualTo(before);
    }

    @Test
    void aPrintThatCannotBeWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "kept");
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--out", file.resolve("p.pdf")), "cannot write");
        assertThat(file).hasContent("kept");
        Path taken = Files.createDirectories(folder.resolve("taken.pdf").resolve("in"));
        Refusal.isWrongUse(linewalk("trace", set, "--from", "P1", "--out", taken.getParent()), "cannot write");
        assertThat(folder.toFile().list())
                .as("no half print")
                .containsExactlyInAnyOrder("press", "press.pdf", "file", "taken.pdf");
    }

    @Test
    void theDemoOverwritesNothing() throws IOException {
        Path mine = Files.createDirectories(folder.resolve("mine"));
        Files.writeString(mine.resolve("notes.txt"), "kept");
        Refusal.isWrongUse(linewalk("demo", mine), "not empty");
        Refusal.isWrongUse(linewalk("demo", folder.resolve("new"), "--style", "baroque"), "baroque", "iso");
        assertThat(mine.toFile().list()).containsExactly("notes.txt");
        assertThat(folder.resolve("new")).doesNotExist();
    }
}
