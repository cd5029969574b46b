package linewalk.tests.quality;
import org.apache.pdfbox.Loader; import java.io.File;
public class Scratch2 { public static void main(String[] a) throws Exception { try(var d=Loader.loadPDF(new File(a[0]))){ PrintPage pp=PageReader.read(d.getPage(0),1);
 for(var p:Pieces.of(pp)){ for(int i=0;i<p.symbols().size();i++) System.out.println("symbol "+i+" "+p.symbols().get(i)); for(var l:p.lines()) System.out.println(l);} 
 for(Layers<String> l:LayersOfPage.of(pp)){ for(int i=0;i<l.order().size();i++) System.out.println(i+" "+l.order().get(i)); for(var t:l.trees()) System.out.println(t); System.out.println(l.gains()+" "+l.crossings()); }}}}
