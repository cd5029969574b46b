package linewalk.renderer.link;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.PageKey;
import linewalk.drawing.Reference;
import linewalk.drawing.Sheet;
import linewalk.renderer.copy.SourceCopy;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/**
 * Writes a source with a link on every reference that has a mate, an outline by sheets, and, if wanted, a path that can be
 * hidden. The original's bytes stand unchanged at the start of the file.
 */
public final class LinkedCopy {

    private final LinkJob job;
    private final String source;
    private final SourceCopy copy;
    private final Map<PageKey, Sheet> sheets = new HashMap<>();
    private final Map<String, Reference> references = new HashMap<>();
    private final Map<Integer, List<PDAnnotation>> notes = new LinkedHashMap<>();

    private LinkedCopy(LinkJob job, String source, SourceCopy copy) {
        this.job = job;
        this.source = source;
        this.copy = copy;
        job.set().sheets().forEach(s -> sheets.put(s.page(), s));
        job.set().references().forEach(r -> references.put(r.id(), r));
    }

    /**
     * @param source as the set names it
     * @return how many links were written
     * @throws linewalk.drawing.UserError where the source can't be read or added to
     */
    public static int write(LinkJob job, String source, OutputStream out) throws IOException {
        try (SourceCopy copy = SourceCopy.open(job.sources().apply(source))) {
            return new LinkedCopy(job, source, copy).write(out);
        }
    }

    private int write(OutputStream out) throws IOException {
        Links links = new Links(job, copy, sheets);
        int count = 0;
        for (Reference r : job.set().references()) {
            if (r.page().source().equals(source)) {
                List<Reference> mates = r.mates().stream().map(references::get).toList();
                List<PDAnnotation> made = links.of(r, mates);
                notes.computeIfAbsent(r.page().page(), k -> new ArrayList<>()).addAll(made);
                count += made.size();
            }
        }
        if (job.trace().isPresent()) {
            new PathLayer(copy, source, sheets).draw(job.trace().get(), notes);
        }
        notes.forEach(copy::annotate);
        SheetOutline.add(
                copy,
                job.set().sheets().stream()
                        .filter(s -> s.page().source().equals(source))
                        .toList());
        copy.write(out);
        return count;
    }
}
