package neutralpoint.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.document.Decimals;

/** Fields of a JSON object, in the order they are given. */
final class JsonFields {
    private JsonFields() {}

    /** An empty optional value stands for a field that has none. */
    static Map<String, Object> fields(Object... namesAndValues) {
        Map<String, Object> out = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            out.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return out;
    }

    static Optional<Double> rounded(OptionalDouble value) {
        return value.stream().boxed().map(Decimals::rounded).findFirst();
    }
}
