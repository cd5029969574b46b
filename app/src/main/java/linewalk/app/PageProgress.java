package linewalk.app;

import linewalk.importer.SourceImporter;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Pages read so far and the time left, on a terminal; silent in a pipe. */
final class PageProgress implements SourceImporter.Progress, AutoCloseable {

    private final String name;
    private ProgressBar bar;

    PageProgress(String name) {
        this.name = name;
    }

    @Override
    public synchronized void pages(int done, int of) {
        if (System.console() == null) {
            return;
        }
        if (bar == null) {
            bar = new ProgressBarBuilder()
                    .setTaskName(name)
                    .setInitialMax(of)
                    .setUnit(" pages", 1)
                    .setStyle(ProgressBarStyle.ASCII)
                    .build();
        }
        bar.stepTo(done);
    }

    @Override
    public synchronized void close() {
        if (bar != null) {
            bar.close();
        }
    }
}
