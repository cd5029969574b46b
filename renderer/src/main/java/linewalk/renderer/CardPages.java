package linewalk.renderer;

import java.io.IOException;
import linewalk.drawing.Component;
import linewalk.drawing.Line;
import linewalk.renderer.card.CardJob;
import linewalk.renderer.card.JobCard;
import linewalk.renderer.card.Naming;
import linewalk.renderer.sheet.Book;

/** The job card that goes with a print: the same facts, called by the same words. */
final class CardPages {

    /** As the print calls parts. */
    private record Called(Words words) implements Naming {
        @Override
        public String called(Component c) {
            return words.called(c);
        }

        @Override
        public String description(Component c) {
            return words.description(c);
        }

        @Override
        public String setting(Component c) {
            return words.setting(c);
        }

        @Override
        public String item(Component c) {
            return words.balloon(c);
        }

        @Override
        public String number(Line l) {
            return words.number(l);
        }
    }

    private CardPages() {}

    /**
     * Adds the card's pages.
     *
     * @param print the number of the print's first page
     */
    static void add(PrintJob job, int doubts, int print, Book book) throws IOException {
        Words words = new Words(job);
        CardJob.Head head = new CardJob.Head(
                SheetTitles.set(job),
                Words.capital(job.subject().title()),
                words.condition(),
                job.date(),
                Sections.sheets(job),
                doubts);
        CardJob card = new CardJob(
                head,
                job.set(),
                job.subject().excerpt(),
                job.subject().legs(),
                job.step(),
                job.moment().state(),
                job.facts().parts(),
                new Called(words));
        JobCard.addTo(book, card, print, job.form().widthPt(), job.form().heightPt());
    }
}
