package linewalk.importer;
import org.junit.jupiter.api.Test;
class DbgTest {
  @Test void x() throws Exception {
    for (ValveArt.Hand h : ValveArt.Hand.values())
    java.nio.file.Files.write(java.nio.file.Path.of("/tmp/sa_"+h+".pdf"), ValveTableTest.sheet(h,0,false,28,0.5).pdf());
    linewalk.drawing.SheetReading r = ValveTableTest.sheet(ValveArt.Hand.FILLED_HEADS,0,false,15,0.5).read();
    r.components().forEach(c -> System.out.println(c.tag()+" "+c.box()+" "+c.ports().stream().map(p->p.place()).toList()+" "+c.positions().size()));
    r.doubts().forEach(c -> System.out.println(c));
  }
}
