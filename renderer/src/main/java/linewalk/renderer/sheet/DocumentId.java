package linewalk.renderer.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashSet;
import java.util.Set;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * Makes a PDF's /ID follow from what is drawn on its pages, not from the clock: the same print is the same file, and two
 * prints under one title are not taken for one.
 */
public final class DocumentId {

    private final MessageDigest digest;
    private final Set<COSStream> seen = new HashSet<>();

    private DocumentId() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Once all pages are in the document; its /Info goes into the /ID as well.
     *
     * @param more what else tells it from other documents
     */
    public static void set(PDDocument document, String more) throws IOException {
        DocumentId id = new DocumentId();
        id.digest.update(more.getBytes(StandardCharsets.UTF_8));
        for (PDPage page : document.getPages()) {
            id.add(page.getCOSObject().getDictionaryObject(COSName.CONTENTS));
            id.addXObjects(page.getCOSObject());
        }
        document.setDocumentId(ByteBuffer.wrap(id.digest.digest()).getLong());
    }

    private void add(COSBase drawn) throws IOException {
        if (drawn instanceof COSStream stream && seen.add(stream)) {
            try (InputStream in = stream.createRawInputStream()) {
                digest.update(in.readAllBytes());
            }
            addXObjects(stream);
        }
    }

    /** Forms and images that a page or a form may draw. */
    private void addXObjects(COSDictionary owner) throws IOException {
        COSDictionary resources = owner.getCOSDictionary(COSName.RESOURCES);
        COSDictionary all = resources == null ? null : resources.getCOSDictionary(COSName.XOBJECT);
        if (all != null) {
            for (COSName name : all.keySet()) {
                add(all.getDictionaryObject(name));
            }
        }
    }
}
