package linewalk.linker;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Few types are published; the rest is free to change. */
class PublicApiTest {

    @Test
    void onlyTheLinkerTheTracerAndTheirWordsArePublic() throws Exception {
        Path classes = Path.of(
                Linker.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        List<String> published = new ArrayList<>();
        for (String name : names(classes.resolve("linewalk/linker"))) {
            if (Modifier.isPublic(Class.forName("linewalk.linker." + name).getModifiers())) {
                published.add(name);
            }
        }
        assertThat(published)
                .containsExactlyInAnyOrder(
                        "Linker",
                        "Tracer",
                        "Steps",
                        "Question",
                        "Leg",
                        "Trace",
                        "Answer",
                        "Excerpt",
                        "Excerpts",
                        "Review",
                        "Neighbourhood");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".class") && !f.contains("$") && !f.startsWith("package-info"))
                    .map(f -> f.replace(".class", ""))
                    .toList();
        }
    }
}
