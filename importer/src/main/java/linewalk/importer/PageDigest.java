package linewalk.importer;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * A key of everything that a page's reading depends on: content, resources, boxes, rotation, the settings that reading
 * uses and the reader's version. Resources shared by pages are digested once.
 */
final class PageDigest {

    private final Map<COSBase, byte[]> shared = new IdentityHashMap<>();
    private final String settings;

    PageDigest(String settings) {
        this.settings = settings;
    }

    String of(PDPage page) throws IOException {
        MessageDigest digest = sha256();
        digest.update(settings.getBytes(StandardCharsets.UTF_8));
        update(digest, page.getCOSObject(), Collections.newSetFromMap(new IdentityHashMap<>()));
        // what a page inherits from the page tree
        update(digest, page.getResources() == null ? null : page.getResources().getCOSObject(), Set.of());
        digest.update((page.getCropBox() + " " + page.getRotation()).getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(digest.digest(), 0, 16);
    }

    private void update(MessageDigest digest, COSBase base, Set<COSBase> path) throws IOException {
        if (base instanceof COSObject indirect) {
            COSBase object = indirect.getObject();
            if (object instanceof COSDictionary) {
                digest.update(digestOf(object, path));
            } else {
                update(digest, object, path);
            }
        } else if (base instanceof COSDictionary dictionary) {
            updateDictionary(digest, dictionary, path);
        } else if (base instanceof COSArray array) {
            for (int i = 0; i < array.size(); i++) {
                update(digest, array.get(i), path);
            }
        } else if (base != null) {
            digest.update(base.toString().getBytes(StandardCharsets.UTF_8));
        }
    }

    private byte[] digestOf(COSBase object, Set<COSBase> path) throws IOException {
        byte[] known = shared.get(object);
        if (known != null) {
            return known;
        }
        if (path.contains(object)) {
            return new byte[0];
        }
        MessageDigest own = sha256();
        Set<COSBase> deeper = Collections.newSetFromMap(new IdentityHashMap<>());
        deeper.addAll(path);
        deeper.add(object);
        update(own, object, deeper);
        byte[] result = own.digest();
        shared.put(object, result);
        return result;
    }

    private void updateDictionary(MessageDigest digest, COSDictionary dictionary, Set<COSBase> path)
            throws IOException {
        Map<String, COSBase> sorted = new TreeMap<>();
        for (COSName name : dictionary.keySet()) {
            sorted.put(name.getName(), dictionary.getItem(name));
        }
        if (COSName.PAGE.equals(dictionary.getCOSName(COSName.TYPE))) {
            sorted.keySet().removeAll(Set.of("Parent", "StructParents", "Annots", "B"));
        }
        sorted.remove("Parent");
        for (Map.Entry<String, COSBase> e : sorted.entrySet()) {
            digest.update(e.getKey().getBytes(StandardCharsets.UTF_8));
            update(digest, e.getValue(), path);
        }
        if (dictionary instanceof COSStream stream) {
            try (InputStream raw = stream.createRawInputStream()) {
                digest.update(raw.readAllBytes());
            }
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
