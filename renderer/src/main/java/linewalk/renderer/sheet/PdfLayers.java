package linewalk.renderer.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/** Layers of a PDF (optional content groups of ISO 32000-1, 8.11), all shown at first. */
final class PdfLayers {

    private final Map<String, PDOptionalContentGroup> groups = new LinkedHashMap<>();

    PDOptionalContentGroup get(String name) {
        return groups.computeIfAbsent(name, PDOptionalContentGroup::new);
    }

    void into(PDDocument document) {
        if (groups.isEmpty()) {
            return;
        }
        PDOptionalContentProperties properties = new PDOptionalContentProperties();
        groups.values().forEach(properties::addGroup);
        document.getDocumentCatalog().setOCProperties(properties);
    }
}
