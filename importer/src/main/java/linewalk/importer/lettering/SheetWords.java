package linewalk.importer.lettering;

import java.util.List;

/** Words for a sheet, in the languages in which drawings of the trade are common, as parts of patterns. */
public final class SheetWords {

    /** English, German, French, Spanish, Italian, Portuguese, Dutch and Swedish, Polish. */
    public static final List<String> WHOLE = List.of(
            "SHEET", "BLATT", "FOLIO", "PLANCHE", "HOJA", "LÁMINA", "LAMINA", "FOGLIO", "TAVOLA", "FOLHA", "BLAD",
            "ARKUSZ");

    /** Those that a title block has beside a number, cut short too. */
    public static final String TITLED = "(?:" + String.join("|", WHOLE) + "|SHT|SH|PAGE|PG|TAV)";

    /** Those of references, cut short too: no letter follows. */
    static final String REFERRED =
            "(?:" + String.join("|", WHOLE) + "|SHT|SH|PAGE|PG|DWG|DRG|BL|FOL|L[AÁ]M|FG|TAV|FL|ARK)(?:\\.|(?![A-Z]))";

    /** Between a sheet's number and how many there are. */
    public static final String OF = "(?:OF|VON|DE|SUR|DI|VAN|AV|Z)";

    private SheetWords() {}
}
