package linewalk.tests.quality;
import java.io.*; import java.nio.file.*; import java.time.LocalDate; import java.util.*; import java.util.stream.*;
import linewalk.drawing.DrawingSet; import linewalk.linker.*; import linewalk.renderer.*; import linewalk.renderer.ink.Palette; import linewalk.tests.plant.*;
import org.apache.pdfbox.Loader;
public class Scratch {
  static PrintJob job(RandomPlant p, Paper paper){ DrawingSet set=p.set();
    return new PrintJob(new SetFacts("Plant",set,p.items(),p.parts(),s->Path.of("missing.pdf"),Palette.OWN),Subject.of(new Excerpts(set).whole()),Moment.AT_REST,new PrintForm(paper,Turn.FITTING,Look.DRAWN,Set.of()),LocalDate.of(2026,2,3)); }
  static int DR,NE,GA;
  public static void main(String[] a) throws Exception {
    int from=Integer.parseInt(a[0]), to=Integer.parseInt(a[1]); Paper paper=Paper.valueOf(a[2]);
    long tp=0,tm=0; Map<String,Integer> sums=new TreeMap<>(); double cap=9;
    for(int seed=from;seed<to;seed++){
      RandomPlant p=RandomPlant.of(seed); long t0=System.nanoTime(); byte[] pdf;
      try { ByteArrayOutputStream o=new ByteArrayOutputStream(); TracePrint.write(job(p,paper),o); pdf=o.toByteArray(); } catch(Exception e){ System.out.println("seed "+seed+" "+p.set().components().size()+" EXC "+e); e.printStackTrace(System.out); continue; }
      long t1=System.nanoTime(); Quality q; try(var d=Loader.loadPDF(pdf)){ q=Quality.of(d);} long t2=System.nanoTime(); tp+=t1-t0; tm+=t2-t1;
      if(a.length>3) Files.write(Path.of(a[3],"s"+seed+".pdf"),pdf);
      System.out.printf("seed %d parts %d refs %d pages %.0f print %d ms meter %d ms cross %.0f%n",seed,p.set().components().size(),p.set().references().size(),q.figures().get("pages"),(t1-t0)/1000000,(t2-t1)/1000000,q.figures().getOrDefault("lines.crossings",0.0));
      try(var d=Loader.loadPDF(pdf)){ for(int pg=0;pg<d.getNumberOfPages();pg++){ PrintPage pp=PageReader.read(d.getPage(pg),pg+1); if(pp.symbols().isEmpty()) continue; int drawn=new LineWork(pp).crossings(), need=0, g=0; for(Layers<String> l:LayersOfPage.of(pp)){ need+=l.crossings(); for(var sw:l.gains()){ g++; System.out.println("   GAIN page "+(pg+1)+" "+sw);} } if(drawn!=need||g>0) System.out.println("   page "+(pg+1)+" drawn "+drawn+" need "+need+" gains "+g); DR+=drawn;NE+=need;GA+=g; } }
      cap=Math.min(cap,q.figures().get("capitals.mm"));
      for(Overlap o:q.overlaps()){ sums.merge(o.kind(),1,Integer::sum); System.out.println("  "+o);} }
    System.out.println("print s "+tp/1e9+" meter s "+tm/1e9+" overlaps "+sums+" capitals "+cap+" drawn "+DR+" need "+NE+" gains "+GA);
  }
}
