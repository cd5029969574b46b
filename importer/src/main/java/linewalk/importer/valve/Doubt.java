package linewalk.importer.valve;

/** Why a valve is not read: half a reading would be taken for all of it. */
final class Doubt extends Exception {

    private static final long serialVersionUID = 1;

    Doubt(String why) {
        super(why, null, false, false);
    }
}
