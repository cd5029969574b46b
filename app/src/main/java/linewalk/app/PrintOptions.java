package linewalk.app;

import java.nio.file.Path;
import java.util.Set;
import linewalk.drawing.UserError;
import linewalk.renderer.Layer;
import linewalk.renderer.Look;
import linewalk.renderer.Paper;
import linewalk.renderer.PrintForm;
import linewalk.renderer.Turn;
import picocli.CommandLine.Option;

/** The options of every command that prints. */
final class PrintOptions {

    @Option(names = "--look", defaultValue = "drawn", description = "${COMPLETION-CANDIDATES} (default: drawn)")
    private Look look;

    @Option(names = "--paper", defaultValue = "A3", description = "${COMPLETION-CANDIDATES} (default: A3)")
    private Paper paper;

    @Option(
            names = "--turn",
            defaultValue = "fitting",
            description = "How the paper lies: ${COMPLETION-CANDIDATES} (default: fitting, portrait where only so the"
                    + " picture comes on one page)")
    private Turn turn;

    @Option(
            names = "--hide",
            split = ",",
            paramLabel = "LAYER",
            description = "Leave lines out of the drawn look: ${COMPLETION-CANDIDATES}")
    private Set<Layer> hidden = Set.of();

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the print as .pdf, .svg or .png; further paths, and further pages of .svg and .png,"
                    + " get -2, -3, ...")
    private Path out;

    @Option(names = "--dpi", paramLabel = "N", description = "Dots per inch of a .png, 50 to 600 (default: 150)")
    private Integer dpi;

    @Option(
            names = "--job-card",
            description =
                    "After the print, pages for planners to hand out: isolation points, stored energy, gauges, values"
                            + " to measure, sign-off.")
    private boolean jobCard;

    /** Null where no print was asked for. */
    PrintFile file() {
        if (out == null && jobCard) {
            throw new UserError("--job-card is part of a print: name a file by --out, such as --out path.pdf");
        }
        if (out == null && dpi != null) {
            throw new UserError("--dpi is for pictures: name one by --out, such as --out path.png");
        }
        return out == null ? null : PrintFile.of(out, dpi);
    }

    PrintForm form() {
        return new PrintForm(paper, turn, look, hidden, jobCard);
    }
}
