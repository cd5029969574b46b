package linewalk.importer.ocr;

import java.util.List;

/** Opens the engine at the first line: a page with a text layer never pays for it. */
final class LazyReader implements LetterReader {

    private TesseractReader engine;

    @Override
    public List<ReadLetter> line(Crop crop) {
        if (engine == null) {
            engine = TesseractReader.open();
        }
        return engine.line(crop);
    }

    @Override
    public void close() {
        if (engine != null) {
            engine.close();
            engine = null;
        }
    }
}
