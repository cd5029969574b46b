package linewalk.drawing;

/**
 * Where a reference says that its line goes on.
 *
 * @param sheet the sheet's name as printed
 * @param zone null where none is given (a letter, a name or a line number then tells the mate)
 */
public record Target(String sheet, Zone zone) {

    @Override
    public String toString() {
        return zone == null ? sheet : sheet + "/" + zone;
    }
}
