package linewalk.tests;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A press on two sheets of which nothing can be read, told by hand tags alone: pump P1 on sheet 10, valve V1, cylinder
 * C1 and the tank on sheet 20, joined by one pair of references.
 */
final class TaggedSet {

    /** The walk at rest, in designations. */
    static final List<String> AT_REST = List.of("P1", "V1", "TANK");

    /** The walk with Y1 energised. */
    static final List<String> EXTENDING = List.of("P1", "V1", "C1", "V1", "TANK");

    private static final String TAGS = """
            tag=sheet page=1 name=10 title=Power revision=B
            tag=grid page=1 columns=1_2_3_4 rows=A_B x0Pt=0 y0Pt=0 x1Pt=1191 y1Pt=842
            tag=component page=1 xPt=200 yPt=600 name=P1 kind=pump setting=210_bar widthPt=60 heightPt=60
            tag=port page=1 xPt=200 yPt=570 component=P1 name=P
            tag=reference page=1 xPt=1000 yPt=300 targets=20/A1 label=L-1 flow=out
            tag=join page=1 from=P1:P to=@1000,300 kind=working label=L-1
            tag=sheet page=2 name=20 title=Press
            tag=grid page=2 columns=1_2_3_4 rows=A_B
            tag=reference page=2 xPt=100 yPt=300 targets=10/A4 label=L-1 flow=in
            tag=mate page=1 xPt=1000 yPt=300 toPage=2 toXPt=100 toYPt=300
            tag=component page=2 xPt=400 yPt=400 name=V1 kind=directional-valve widthPt=120 heightPt=40
            tag=port page=2 xPt=390 yPt=420 component=V1 name=P
            tag=port page=2 xPt=410 yPt=420 component=V1 name=T
            tag=port page=2 xPt=390 yPt=380 component=V1 name=A
            tag=port page=2 xPt=410 yPt=380 component=V1 name=B
            tag=position component=V1 by=rest how=spring passages=P-T
            tag=position component=V1 by=Y1 how=solenoid passages=P-A_B-T
            tag=component page=2 xPt=400 yPt=150 name=C1 kind=cylinder widthPt=160 heightPt=40
            tag=port page=2 xPt=330 yPt=170 component=C1 name=A
            tag=port page=2 xPt=470 yPt=170 component=C1 name=B
            tag=component page=2 xPt=700 yPt=700 name=TANK kind=tank widthPt=60 heightPt=40
            tag=port page=2 xPt=700 yPt=690 component=TANK name=R
            tag=join page=2 from=@100,300 to=V1:P
            tag=join page=2 from=V1:A to=C1:A
            tag=join page=2 from=V1:B to=C1:B
            tag=join page=2 from=V1:T to=TANK:R
            """;

    private TaggedSet() {}

    /** Draws and imports the two pages; the tags are still to be written. */
    static Path untagged(Path folder) {
        Path set = folder.resolve("press");
        Run.fine("import", Pdfs.noise(folder.resolve("press.pdf"), 2), "--into", set);
        Pdfs.write(set.resolve("cycle.csv"), "step,name,Y1\n1,Rest,0\n2,Extend,1\n");
        return set;
    }

    static Path tagged(Path folder) {
        Path set = untagged(folder);
        writeJson(set);
        return set;
    }

    static void writeJson(Path set) {
        List<Map<String, Object>> tags = tags().stream().map(TaggedSet::typed).toList();
        try {
            Files.write(set.resolve("tags.json"), new ObjectMapper().writeValueAsBytes(Map.of("tags", tags)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void writeCsv(Path set) {
        Set<String> columns = new LinkedHashSet<>();
        tags().forEach(t -> columns.addAll(t.keySet()));
        List<String> rows = new ArrayList<>(List.of(String.join(",", columns)));
        for (Map<String, String> tag : tags()) {
            rows.add(columns.stream().map(c -> quoted(tag.get(c))).collect(Collectors.joining(",")));
        }
        Pdfs.write(set.resolve("tags.csv"), String.join("\n", rows) + "\n");
    }

    private static String quoted(String cell) {
        return cell == null ? "" : cell.contains(",") ? '"' + cell + '"' : cell;
    }

    private static List<Map<String, String>> tags() {
        return TAGS.lines()
                .map(line -> {
                    Map<String, String> tag = new LinkedHashMap<>();
                    for (String word : line.split(" ")) {
                        int is = word.indexOf('=');
                        tag.put(word.substring(0, is), word.substring(is + 1).replace('_', ' '));
                    }
                    return tag;
                })
                .toList();
    }

    private static Map<String, Object> typed(Map<String, String> tag) {
        Map<String, Object> out = new LinkedHashMap<>();
        tag.forEach((k, v) -> out.put(k, k.endsWith("Pt") || k.endsWith("age") ? Double.valueOf(v) : v));
        out.computeIfPresent("page", (k, v) -> ((Double) v).intValue());
        out.computeIfPresent("toPage", (k, v) -> ((Double) v).intValue());
        return out;
    }

    /** The designations that a trace's JSON walks over. */
    static List<String> parts(Run trace) {
        List<String> parts = new ArrayList<>();
        trace.json().get("path").forEach(x -> parts.add(x.path("component").asText(null)));
        parts.removeIf(Objects::isNull);
        return parts;
    }
}
