package linewalk.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import linewalk.drawing.CycleChart;
import linewalk.drawing.DrawingSet;
import linewalk.drawing.Part;
import linewalk.drawing.SetSettings;
import linewalk.drawing.SheetReading;
import linewalk.drawing.UserError;
import linewalk.drawing.store.SetFolder;
import linewalk.importer.SourceImporter;
import linewalk.linker.Linker;
import linewalk.linker.Review;
import linewalk.linker.Steps;

/** A set folder read and linked: readings from the cache where sources are unchanged, everything else afresh. */
record LoadedSet(SetFolder folder, DrawingSet set, CycleChart chart, Map<String, Part> parts) {

    static LoadedSet load(Path path) {
        SetFolder folder = SetFolder.open(path);
        SetSettings settings = folder.settings();
        if (settings.sources().isEmpty()) {
            throw new UserError(path + " names no sources; add a file with: linewalk import FILE.pdf --into " + path);
        }
        List<SheetReading> readings = read(folder, settings);
        List<Part> parts = folder.parts();
        CycleChart chart = folder.chart();
        DrawingSet set = Linker.link(readings, folder.tags(), settings, parts, chart);
        Map<String, Part> byTag = new HashMap<>();
        parts.forEach(p -> byTag.put(p.tag(), p));
        return new LoadedSet(folder, set, chart, byTag);
    }

    Steps steps() {
        return new Steps(set, chart);
    }

    /** With what its steps add to its findings, weighed by the settings, and those marked that people keep. */
    DrawingSet checked() {
        return Review.of(steps().withFindings(), folder.settings(), folder.tags());
    }

    /** Item numbers by designation. */
    Map<String, Integer> itemNumbers() {
        return folder.itemNumbers(
                set.components().stream().map(c -> c.tag()).distinct().toList());
    }

    /** The title that most sheets share, or the folder's name. */
    String title() {
        Path name = folder.path().toAbsolutePath().normalize().getFileName();
        return name == null ? "drawing set" : name.toString();
    }

    /** Reads all sources, so that one which can't be read is said before the set's settings name it. */
    static void checkReadable(SetFolder folder, SetSettings settings) {
        read(folder, settings);
    }

    private static List<SheetReading> read(SetFolder folder, SetSettings settings) {
        List<SheetReading> readings = new ArrayList<>();
        for (String name : settings.sources()) {
            try (PageProgress progress = new PageProgress(name)) {
                SourceImporter importer = new SourceImporter(settings, folder.readings(), progress);
                readings.addAll(importer.read(folder.source(name), name));
            }
        }
        return readings;
    }
}
