package linewalk.renderer.copy;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.cos.COSString;

/** Objects in the syntax of a PDF file (ISO 32000-1, 7.3), streams excepted; a letter a byte. */
public final class CosText {

    private CosText() {}

    static void write(StringBuilder out, COSBase value) {
        if (value instanceof COSObject o && o.getKey() != null) {
            out.append(reference(o.getKey()));
        } else if (value instanceof COSDictionary d) {
            out.append("<<");
            for (Map.Entry<COSName, COSBase> e : d.entrySet()) {
                name(out, e.getKey().getName());
                out.append(' ');
                indirect(out, e.getValue());
            }
            out.append(">>");
        } else if (value instanceof COSArray a) {
            out.append('[');
            for (int i = 0; i < a.size(); i++) {
                out.append(i == 0 ? "" : " ");
                indirect(out, a.get(i));
            }
            out.append(']');
        } else {
            atom(out, value);
        }
    }

    /** What has a number of its own in the file is referred to. */
    private static void indirect(StringBuilder out, COSBase value) {
        boolean own = value instanceof COSDictionary && !value.isDirect() && value.getKey() != null;
        if (own) {
            out.append(reference(value.getKey()));
        } else {
            write(out, value);
        }
    }

    private static void atom(StringBuilder out, COSBase value) {
        if (value instanceof COSName n) {
            name(out, n.getName());
        } else if (value instanceof COSString s) {
            out.append('<').append(s.toHexString()).append('>');
        } else if (value instanceof COSInteger i) {
            out.append(i.longValue());
        } else if (value instanceof COSNumber n) {
            out.append(String.format(Locale.ROOT, "%.5f", n.floatValue()));
        } else if (value instanceof COSBoolean b) {
            out.append(b.getValue());
        } else {
            out.append("null");
        }
    }

    private static void name(StringBuilder out, String name) {
        out.append('/');
        for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
            boolean plain = b > 32 && b < 127 && "#/%()<>[]{}".indexOf(b) < 0;
            out.append(plain ? String.valueOf((char) b) : String.format("#%02X", b & 0xff));
        }
    }

    public static String reference(COSObjectKey key) {
        return key.getNumber() + " " + key.getGeneration() + " R";
    }

    /** A text string: letters of ASCII as they are, anything else as UTF-16. */
    public static String text(String said) {
        StringBuilder text = new StringBuilder(said.length() + 2).append('(');
        for (int i = 0; i < said.length(); i++) {
            char c = said.charAt(i);
            if (c < 32 || c > 126) {
                return wide(said);
            }
            if (c == '(' || c == ')' || c == '\\') {
                text.append('\\');
            }
            text.append(c);
        }
        return text.append(')').toString();
    }

    private static String wide(String said) {
        StringBuilder hex = new StringBuilder("<FEFF");
        said.chars().forEach(c -> hex.append(String.format("%04X", c)));
        return hex.append('>').toString();
    }

    /** With two decimals. */
    public static void number(StringBuilder out, double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths < 0) {
            out.append('-');
        }
        long positive = Math.abs(hundredths);
        out.append(positive / 100).append('.').append(positive / 10 % 10).append(positive % 10);
    }
}
