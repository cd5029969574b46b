package linewalk.drawing.store;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.databind.DatabindException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import linewalk.drawing.UserError;

/** The one JSON mapper, and errors that name file, line and column. */
final class Json {

    static final ObjectMapper MAPPER = JsonMapper.builder()
            .serializationInclusion(JsonInclude.Include.NON_NULL)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private Json() {}

    static <T> T read(Path file, Class<T> type) {
        try {
            return MAPPER.readValue(Files.readAllBytes(file), type);
        } catch (JacksonException e) {
            throw malformed(file, e);
        } catch (IOException e) {
            throw new UserError("cannot read " + file + ": " + e.getMessage(), e);
        }
    }

    static void write(Path file, Object value) {
        AtomicFile.write(file, out -> MAPPER.writerWithDefaultPrettyPrinter().writeValue(out, value));
    }

    static UserError malformed(Path file, JacksonException e) {
        JsonLocation at = e.getLocation();
        String where = at == null ? "" : ", line " + at.getLineNr() + ", column " + at.getColumnNr();
        String field = e instanceof JsonMappingException ? path((JsonMappingException) e) : "";
        return new UserError(file + where + field + ": " + firstLine(e), e);
    }

    private static String path(JsonMappingException e) {
        StringBuilder path = new StringBuilder();
        for (JsonMappingException.Reference r : e.getPath()) {
            path.append(r.getFieldName() == null ? "[" + r.getIndex() + "]" : "." + r.getFieldName());
        }
        return path.length() == 0 ? "" : " (at " + path.toString().replaceFirst("^\\.", "") + ")";
    }

    private static String firstLine(JacksonException e) {
        if (e instanceof UnrecognizedPropertyException u) {
            return "there is no field '" + u.getPropertyName() + "'; known are " + u.getKnownPropertyIds();
        }
        String text = e instanceof DatabindException && e.getCause() != null
                ? e.getCause().getMessage()
                : e.getOriginalMessage();
        return String.valueOf(text).lines().findFirst().orElse("malformed");
    }
}
