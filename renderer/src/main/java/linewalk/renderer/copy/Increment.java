package linewalk.renderer.copy;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import linewalk.drawing.UserError;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * An incremental update (ISO 32000-1, 7.5.6) written as text: the source's bytes, then the objects that are new or
 * changed, then a table of them that points back at the source's own. PDFBox reads the file; writing the update so costs
 * no more than copying the file.
 */
public final class Increment implements Closeable {

    /** The last words of a file stand within so many bytes of its end. */
    private static final int TAIL = 2048;

    /** What stands around an object's text, and its row in the table. */
    private static final int PER_OBJECT = 45;

    private static final Pattern START = Pattern.compile("startxref\\s+(\\d+)\\s+%%EOF");
    private static final Pattern STREAM = Pattern.compile("\\d+\\s+\\d+\\s+obj");

    private final Path source;
    private final PDDocument document;
    private final List<PDPage> pages = new ArrayList<>();
    private final long length;
    private final long previous;
    private final boolean table;
    private final Map<Long, String> bodies = new TreeMap<>();
    private final Map<Long, Integer> generations = new TreeMap<>();
    private long next;

    private Increment(Path source, PDDocument document) throws IOException {
        this.source = source;
        this.document = document;
        document.getPages().forEach(pages::add);
        length = Files.size(source);
        try (RandomAccessFile file = new RandomAccessFile(source.toFile(), "r")) {
            Matcher m = START.matcher(text(file, Math.max(0, length - TAIL), TAIL));
            long at = -1;
            while (m.find()) {
                at = Long.parseLong(m.group(1));
            }
            String there = at < 0 || at >= length ? "" : text(file, at, 32).stripLeading();
            table = there.startsWith("xref");
            if (!table && !STREAM.matcher(there).lookingAt()) {
                throw damaged(source);
            }
            previous = at;
        }
        long highest = document.getDocument().getXrefTable().keySet().stream()
                .mapToLong(COSObjectKey::getNumber)
                .max()
                .orElse(0);
        next = Math.max(highest + 1, document.getDocument().getTrailer().getLong(COSName.SIZE));
    }

    private static String text(RandomAccessFile file, long from, int most) throws IOException {
        byte[] bytes = new byte[(int) Math.min(most, file.length() - from)];
        file.seek(from);
        file.readFully(bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static UserError damaged(Path source) {
        return new UserError(source + " has a damaged table of its contents, so nothing can be added; export it again");
    }

    /** @throws UserError where the file can't be read, or is locked or damaged so that nothing may be added */
    public static Increment open(Path source) {
        PDDocument document = SourceCopy.load(source);
        try {
            return new Increment(source, document);
        } catch (IOException e) {
            throw SourceCopy.unreadable(source, e);
        }
    }

    public COSDictionary catalog() {
        return document.getDocumentCatalog().getCOSObject();
    }

    /** @param number from 1 */
    public String page(int number) {
        return CosText.reference(pages.get(number - 1).getCOSObject().getKey());
    }

    /** A number for an object that comes later. */
    public long reserve() {
        return next++;
    }

    public void put(long number, String body) {
        bodies.put(number, body);
    }

    /** Returns the object's reference. */
    public String add(String body) {
        long number = reserve();
        put(number, body);
        return number + " 0 R";
    }

    /** A dictionary of the source, with some of its entries replaced by text. */
    public void change(COSDictionary dictionary, Map<COSName, String> entries) {
        StringBuilder body = new StringBuilder("<<");
        dictionary.entrySet().stream()
                .filter(e -> !entries.containsKey(e.getKey()))
                .forEach(e -> {
                    COSDictionary one = new COSDictionary();
                    one.setItem(e.getKey(), e.getValue());
                    StringBuilder text = new StringBuilder();
                    CosText.write(text, one);
                    body.append(text, 2, text.length() - 2);
                });
        entries.forEach((name, value) ->
                body.append('/').append(name.getName()).append(' ').append(value));
        put(dictionary.getKey().getNumber(), body.append(">>").toString());
        generations.put(dictionary.getKey().getNumber(), dictionary.getKey().getGeneration());
    }

    /** Behind what the page has already. */
    public void annotate(int number, List<String> annotations) {
        if (annotations.isEmpty()) {
            return;
        }
        COSDictionary page = pages.get(number - 1).getCOSObject();
        StringBuilder all = new StringBuilder("[");
        if (page.getDictionaryObject(COSName.ANNOTS) instanceof COSArray had) {
            StringBuilder old = new StringBuilder();
            CosText.write(old, had);
            all.append(old, 1, old.length() - 1).append(' ');
        }
        all.append(String.join(" ", annotations)).append(']');
        change(page, Map.of(COSName.ANNOTS, all.toString()));
    }

    public void write(OutputStream out) throws IOException {
        Files.copy(source, out);
        if (bodies.isEmpty()) {
            return;
        }
        int size = bodies.values().stream().mapToInt(String::length).sum();
        StringBuilder text = new StringBuilder(size + PER_OBJECT * bodies.size()).append('\n');
        Map<Long, Long> places = new TreeMap<>();
        bodies.forEach((number, body) -> {
            places.put(number, length + text.length());
            text.append(number)
                    .append(' ')
                    .append(generation(number))
                    .append(" obj\n")
                    .append(body)
                    .append("\nendobj\n");
        });
        long start = length + text.length();
        if (table) {
            table(text, places);
        } else {
            stream(text, places);
        }
        text.append("startxref\n").append(start).append("\n%%EOF\n");
        out.write(text.toString().getBytes(StandardCharsets.ISO_8859_1));
    }

    private int generation(long number) {
        return generations.getOrDefault(number, 0);
    }

    private void table(StringBuilder text, Map<Long, Long> places) {
        text.append("xref\n");
        runs(places).forEach((first, count) -> {
            text.append(first).append(' ').append(count).append('\n');
            for (long n = first; n < first + count; n++) {
                digits(text, places.get(n), 10);
                text.append(' ');
                digits(text, generation(n), 5);
                text.append(" n \n");
            }
        });
        text.append("trailer\n<<").append(trailer()).append(">>\n");
    }

    private static void digits(StringBuilder text, long value, int width) {
        String plain = Long.toString(value);
        text.append("0".repeat(width - plain.length())).append(plain);
    }

    /** Where the source keeps its table in a stream, so must the update. */
    private void stream(StringBuilder text, Map<Long, Long> places) {
        long own = reserve();
        places.put(own, length + text.length());
        StringBuilder index = new StringBuilder();
        StringBuilder rows = new StringBuilder();
        runs(places).forEach((first, count) -> {
            index.append(first).append(' ').append(count).append(' ');
            for (long n = first; n < first + count; n++) {
                rows.append((char) 1);
                for (int shift = 32; shift >= 0; shift -= 8) {
                    rows.append((char) (places.get(n) >> shift & 0xff));
                }
                rows.append((char) (generation(n) >> 8 & 0xff)).append((char) (generation(n) & 0xff));
            }
        });
        text.append(own)
                .append(" 0 obj\n<</Type/XRef/W[1 5 2]/Index[")
                .append(index)
                .append("]/Length ")
                .append(rows.length())
                .append(trailer())
                .append(">>stream\n")
                .append(rows)
                .append("\nendstream\nendobj\n");
    }

    /** First numbers and lengths of runs without a gap. */
    private static Map<Long, Long> runs(Map<Long, Long> places) {
        Map<Long, Long> runs = new TreeMap<>();
        long first = -1;
        for (long n : places.keySet()) {
            if (first < 0 || n != first + runs.get(first)) {
                first = n;
            }
            runs.merge(first, 1L, Long::sum);
        }
        return runs;
    }

    private String trailer() {
        COSDictionary old = document.getDocument().getTrailer();
        COSDictionary kept = new COSDictionary();
        for (COSName name : List.of(COSName.ROOT, COSName.INFO, COSName.ID)) {
            if (old.getItem(name) != null) {
                kept.setItem(name, old.getItem(name));
            }
        }
        StringBuilder text = new StringBuilder();
        CosText.write(text, kept);
        return text.substring(2, text.length() - 2) + "/Size " + next + "/Prev " + previous;
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
