package linewalk.renderer;

import linewalk.linker.Excerpts;

/** Turns the print of a path into one of a circuit. */
final class Circuits {

    private Circuits() {}

    /** All of the job's set, at the same moment and in the same form. */
    static PrintJob whole(PrintJob job) {
        Subject all = Subject.of(new Excerpts(job.set()).whole());
        return new PrintJob(job.facts(), all, job.moment(), job.form(), job.date());
    }
}
