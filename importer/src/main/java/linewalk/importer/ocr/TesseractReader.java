package linewalk.importer.ocr;

import java.nio.ByteBuffer;
import java.nio.IntBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.sourceforge.tess4j.ITessAPI.TessBaseAPI;
import net.sourceforge.tess4j.ITessAPI.TessChoiceIterator;
import net.sourceforge.tess4j.ITessAPI.TessOcrEngineMode;
import net.sourceforge.tess4j.ITessAPI.TessPageIterator;
import net.sourceforge.tess4j.ITessAPI.TessPageIteratorLevel;
import net.sourceforge.tess4j.ITessAPI.TessPageSegMode;
import net.sourceforge.tess4j.ITessAPI.TessResultIterator;
import net.sourceforge.tess4j.TessAPI;

/** One Tesseract engine, kept open: opening costs more than a hundred lines. */
final class TesseractReader implements LetterReader {

    private static final class Data {
        static final Path FOLDER = Natives.languageFolder();
    }

    private static final int DPI = 300;

    private final TessAPI api;
    private TessBaseAPI handle;

    private TesseractReader(TessAPI api, TessBaseAPI handle) {
        this.api = api;
        this.handle = handle;
    }

    static TesseractReader open() {
        TessAPI api = Natives.api();
        TessBaseAPI handle = api.TessBaseAPICreate();
        api.TessBaseAPISetVariable(handle, "debug_file", nullFile());
        int failed = api.TessBaseAPIInit2(handle, folder().toString(), "eng", TessOcrEngineMode.OEM_LSTM_ONLY);
        if (failed != 0) {
            api.TessBaseAPIDelete(handle);
            throw new Missing("the letter reader does not accept its language data; build again", null);
        }
        api.TessBaseAPISetVariable(handle, "debug_file", nullFile());
        api.TessBaseAPISetVariable(handle, "lstm_choice_mode", "2");
        api.TessBaseAPISetPageSegMode(handle, TessPageSegMode.PSM_SINGLE_LINE);
        return new TesseractReader(api, handle);
    }

    private static Path folder() {
        try {
            return Data.FOLDER;
        } catch (ExceptionInInitializerError | NoClassDefFoundError e) {
            throw e.getCause() instanceof Missing m
                    ? m
                    : new Missing("the language data for reading letters cannot be unpacked", e);
        }
    }

    private static String nullFile() {
        return System.getProperty("os.name").startsWith("Windows") ? "NUL" : "/dev/null";
    }

    @Override
    public List<ReadLetter> line(Crop crop) {
        ByteBuffer pixels = ByteBuffer.allocateDirect(crop.grey().length);
        pixels.put(crop.grey()).flip();
        api.TessBaseAPISetImage(handle, pixels, crop.widthPx(), crop.heightPx(), 1, crop.widthPx());
        api.TessBaseAPISetSourceResolution(handle, DPI);
        if (api.TessBaseAPIRecognize(handle, null) != 0) {
            return List.of();
        }
        TessResultIterator result = api.TessBaseAPIGetIterator(handle);
        if (result == null) {
            return List.of();
        }
        try {
            return letters(result);
        } finally {
            api.TessResultIteratorDelete(result);
            api.TessBaseAPIClear(handle);
        }
    }

    private List<ReadLetter> letters(TessResultIterator result) {
        TessPageIterator page = api.TessResultIteratorGetPageIterator(result);
        List<ReadLetter> letters = new ArrayList<>();
        int symbol = TessPageIteratorLevel.RIL_SYMBOL;
        do {
            boolean word = api.TessPageIteratorIsAtBeginningOf(page, TessPageIteratorLevel.RIL_WORD) != 0;
            IntBuffer[] edge = new IntBuffer[4];
            for (int i = 0; i < 4; i++) {
                edge[i] = IntBuffer.allocate(1);
            }
            // without a place there is no word, and to ask for the choices of no word ends the JVM
            if (api.TessPageIteratorBoundingBox(page, symbol, edge[0], edge[1], edge[2], edge[3]) != 0) {
                List<ReadLetter.Option> options = options(result);
                if (!options.isEmpty()) {
                    boolean blank = word && !letters.isEmpty();
                    letters.add(new ReadLetter(
                            edge[0].get(0), edge[1].get(0), edge[2].get(0), edge[3].get(0), blank, options));
                }
            }
        } while (api.TessPageIteratorNext(page, symbol) != 0);
        return letters;
    }

    private List<ReadLetter.Option> options(TessResultIterator result) {
        List<ReadLetter.Option> options = new ArrayList<>();
        TessChoiceIterator choice = api.TessResultIteratorGetChoiceIterator(result);
        if (choice == null) {
            return options;
        }
        double sum = 0;
        do {
            String text = plain(api.TessChoiceIteratorGetUTF8Text(choice));
            double likelihood = api.TessChoiceIteratorConfidence(choice) / 100.0;
            if (text != null && !text.isBlank() && likelihood > 0) {
                add(options, text, likelihood);
                sum += likelihood;
            }
        } while (api.TessChoiceIteratorNext(choice) != 0);
        api.TessChoiceIteratorDelete(choice);
        double scale = sum > 1 ? 1 / sum : 1;
        return options.stream()
                .map(o -> new ReadLetter.Option(o.text(), o.likelihood() * scale))
                .sorted((a, b) -> Double.compare(b.likelihood(), a.likelihood()))
                .toList();
    }

    private static void add(List<ReadLetter.Option> options, String text, double likelihood) {
        for (int i = 0; i < options.size(); i++) {
            if (options.get(i).text().equals(text)) {
                options.set(i, new ReadLetter.Option(text, options.get(i).likelihood() + likelihood));
                return;
            }
        }
        options.add(new ReadLetter.Option(text, likelihood));
    }

    /** Typographers' dashes and quotes are no drafter's. */
    private static String plain(String text) {
        return text == null
                ? null
                : text.replaceAll("[\u2010-\u2015\u2212]", "-")
                        .replaceAll("[\u2018\u2019]", "'")
                        .replaceAll("[\u201C\u201D]", "\"");
    }

    @Override
    public void close() {
        if (handle != null) {
            api.TessBaseAPIEnd(handle);
            api.TessBaseAPIDelete(handle);
            handle = null;
        }
    }
}
