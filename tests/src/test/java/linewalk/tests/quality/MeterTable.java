package linewalk.tests.quality;

import java.nio.file.Path;

/** Prints the table of some prints and lists what lies on what, for people. */
final class MeterTable {

    private MeterTable() {}

    /** @param files prints as PDF */
    public static void main(String[] files) {
        System.out.println(Quality.head());
        StringBuilder list = new StringBuilder();
        for (String file : files) {
            String name = Path.of(file).getFileName().toString();
            Quality quality = Quality.of(Path.of(file));
            System.out.println(quality.row(name));
            quality.overlaps()
                    .forEach(o -> list.append(name).append(": ").append(o).append('\n'));
        }
        System.out.println(list);
    }
}
