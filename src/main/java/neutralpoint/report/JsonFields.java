package neutralpoint.report;

import java.util.LinkedHashMap;
import java.util.Map;

/** Fields of a JSON object, in the order they are given. */
final class JsonFields {
    private JsonFields() {}

    /** A null stands for a field that has no value. */
    static Map<String, Object> fields(Object... namesAndValues) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            out.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return out;
    }
}
