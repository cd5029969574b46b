package linewalk.renderer.link;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.PageKey;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.renderer.copy.Increment;

/**
 * Writes a source with a link on every reference that has a mate, an outline by sheets, and, if wanted, a path that can be
 * hidden. The original's bytes stand unchanged at the start of the file.
 */
public final class LinkedCopy {

    private final LinkJob job;
    private final String source;
    private final Map<PageKey, Sheet> sheets = new HashMap<>();
    private final Map<String, Reference> references = new HashMap<>();

    private LinkedCopy(LinkJob job, String source) {
        this.job = job;
        this.source = source;
        job.set().sheets().forEach(s -> sheets.put(s.page(), s));
        job.set().references().forEach(r -> references.put(r.id(), r));
    }

    /**
     * @param source as the set names it
     * @return how many links were written
     * @throws linewalk.drawing.UserError where the source can't be read or added to
     */
    public static int write(LinkJob job, String source, OutputStream out) throws IOException {
        LinkedCopy linked = new LinkedCopy(job, source);
        if (job.trace().isEmpty()) {
            return linked.links(out);
        }
        Path plain = Files.createTempFile("linewalk-linked", ".pdf");
        try {
            int links;
            try (OutputStream stream = new BufferedOutputStream(Files.newOutputStream(plain))) {
                links = linked.links(stream);
            }
            new PathLayer(source, linked.sheets).write(plain, job.trace().get(), out);
            return links;
        } finally {
            Files.deleteIfExists(plain);
        }
    }

    private int links(OutputStream out) throws IOException {
        try (Increment copy = Increment.open(job.sources().apply(source))) {
            Links links = new Links(job, copy, sheets);
            Map<Integer, List<String>> byPage = new LinkedHashMap<>();
            for (Reference r : job.set().references()) {
                if (r.page().source().equals(source)) {
                    List<Reference> mates =
                            r.mates().stream().map(references::get).toList();
                    byPage.computeIfAbsent(r.page().page(), k -> new ArrayList<>())
                            .addAll(links.of(r, mates));
                }
            }
            byPage.forEach(copy::annotate);
            SheetOutline.add(
                    copy,
                    job.set().sheets().stream()
                            .filter(s -> s.page().source().equals(source))
                            .toList());
            copy.write(out);
            return byPage.values().stream().mapToInt(List::size).sum();
        }
    }
}
