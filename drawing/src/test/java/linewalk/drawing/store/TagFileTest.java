package linewalk.drawing.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import linewalk.drawing.HandTag;
import linewalk.drawing.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hand tags of every kind, the same from JSON and from CSV. */
class TagFileTest {

    private static final List<HandTag> EVERY_KIND = List.of(
            new HandTag.OfSheet("a.pdf", 1, "10", "Pump, main", "C"),
            new HandTag.OfGrid(null, 1, "1 2", "A B", 0.0, 0.0, 800.5, 600.0),
            new HandTag.OfReference(null, 1, 10.25, 20, "2/B4", "2/B5 3", "L-1", "out", null),
            new HandTag.OfMate(null, 1, 10, 20, "2/B4", null, 2, 30, 40, "1/A1", true),
            new HandTag.OfComponent(null, 1, 10, 20, null, "P1", "pump", "210 bar", 60.0, 40.0, null),
            new HandTag.OfPort(null, 1, 10, 20, null, "P1", "P", false),
            new HandTag.OfJoin(null, 1, "P1:P", "@10,20", "working", "L-1", null),
            new HandTag.OfPosition("V1", "Y1 Y2", "solenoid", "P-A B>T!pilot"));

    @TempDir
    Path folder;

    private List<HandTag> tags() {
        return SetFolder.at(folder).tags();
    }

    @Test
    void noFilesMeansNoTags() {
        assertThat(tags()).isEmpty();
    }

    @Test
    void jsonHoldsEveryKind() throws IOException {
        Files.writeString(folder.resolve("tags.json"), """
                {"tags": [
                 {"tag": "sheet", "source": "a.pdf", "page": 1, "name": "10", "title": "Pump, main", "revision": "C"},
                 {"tag": "grid", "page": 1, "columns": "1 2", "rows": "A B",
                  "x0Pt": 0, "y0Pt": 0, "x1Pt": 800.5, "y1Pt": 600},
                 {"tag": "reference", "page": 1, "xPt": 10.25, "yPt": 20, "saw": "2/B4", "targets": "2/B5 3",
                  "label": "L-1", "flow": "out"},
                 {"tag": "mate", "page": 1, "xPt": 10, "yPt": 20, "saw": "2/B4", "toPage": 2, "toXPt": 30, "toYPt": 40,
                  "toSaw": "1/A1", "absent": true},
                 {"tag": "component", "page": 1, "xPt": 10, "yPt": 20, "name": "P1", "kind": "pump",
                  "setting": "210 bar", "widthPt": 60, "heightPt": 40},
                 {"tag": "port", "page": 1, "xPt": 10, "yPt": 20, "component": "P1", "name": "P", "absent": false},
                 {"tag": "join", "page": 1, "from": "P1:P", "to": "@10,20", "kind": "working", "label": "L-1"},
                 {"tag": "position", "component": "V1", "by": "Y1 Y2", "how": "solenoid", "passages": "P-A B>T!pilot"}
                ]}
                """);
        assertThat(tags()).isEqualTo(EVERY_KIND);
    }

    @Test
    void csvHoldsTheSame() throws IOException {
        Files.writeString(folder.resolve("tags.csv"), """
                tag,source,page,name,title,revision,columns,rows,x0Pt,y0Pt,x1Pt,y1Pt,xPt,yPt,saw,targets,label,flow,\
                toPage,toXPt,toYPt,toSaw,absent,kind,setting,widthPt,heightPt,component,from,to,by,how,passages
                sheet,a.pdf,1,10,"Pump, main",C
                grid,,1,,,,1 2,A B,0,0,800.5,600
                reference,,1,,,,,,,,,,10.25,20,2/B4,2/B5 3,L-1,out
                mate,,1,,,,,,,,,,10,20,2/B4,,,,2,30,40,1/A1,true
                component,,1,P1,,,,,,,,,10,20,,,,,,,,,,pump,210 bar,60,40
                port,,1,P,,,,,,,,,10,20,,,,,,,,,false,,,,,P1
                join,,1,,,,,,,,,,,,,,L-1,,,,,,,working,,,,,P1:P,"@10,20"
                position,,,,,,,,,,,,,,,,,,,,,,,,,,,V1,,,Y1 Y2,solenoid,P-A B>T!pilot
                """);
        assertThat(tags()).isEqualTo(EVERY_KIND);
    }

    @Test
    void bothFilesAreRead() throws IOException {
        Files.writeString(folder.resolve("tags.json"), "{\"tags\": [{\"tag\": \"sheet\", \"page\": 1}]}");
        Files.writeString(folder.resolve("tags.csv"), "tag,page\nsheet,2\n");
        assertThat(tags()).extracting(t -> ((HandTag.OfSheet) t).page()).containsExactly(1, 2);
    }

    @Test
    void aNumberThatIsNoneIsNamedByLineAndColumn() throws IOException {
        Files.writeString(folder.resolve("tags.csv"), "tag,page,name\nsheet,1,10\nsheet,two,20\n");
        assertThatThrownBy(this::tags).isInstanceOf(UserError.class).hasMessageContaining("line 3, column 2 (page)");
    }

    @Test
    void aKindThatIsNoneIsNamedByLineAndColumn() throws IOException {
        Files.writeString(folder.resolve("tags.csv"), "page,tag\n1,shoe\n");
        assertThatThrownBy(this::tags)
                .isInstanceOf(UserError.class)
                .hasMessageContaining("line 2, column 2 (tag)")
                .hasMessageContaining("shoe");
    }

    @Test
    void aFieldThatTheTagDoesNotHaveIsTold() throws IOException {
        Files.writeString(
                folder.resolve("tags.json"), "{\"tags\": [\n {\"tag\": \"sheet\", \"page\": 1, \"zone\": \"B4\"}]}");
        assertThatThrownBy(this::tags)
                .isInstanceOf(UserError.class)
                .hasMessageContaining("line 2, column")
                .hasMessageContaining("zone");
    }
}
