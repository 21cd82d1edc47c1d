package neutralpoint.job;

import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import neutralpoint.document.BadInput;
import neutralpoint.document.Node;

/** The pressure gauge over time, as a job file holds it: {"at": "2026-11-02T08:00", "bar": 1.2, "waterCelsius": 15}. */
public final class GaugeLog {
    private GaugeLog() {}

    static List<GaugeReading> read(Node.Fields job) {
        return job.find("gauge").map(n -> n.asItems().items()).orElse(List.of()).stream().map(GaugeLog::reading).toList();
    }

    /** One reading: its bar and celsius with a unit of their own or without, and its time as in 2026-11-02T08:00. */
    public static GaugeReading reading(Node node) {
        Node.Fields f = node.asFields().only(Set.of("at", "bar", "waterCelsius"));
        return new GaugeReading(time(f.get("at")), UnitConversion.plausible(f.get("bar"), "bar", "bar", 0, 6),
                UnitConversion.plausible(f.get("waterCelsius"), "waterCelsius", "celsius", 0, 110));
    }

    static LocalDateTime time(Node node) {
        try {
            return LocalDateTime.parse(node.asText());
        } catch (DateTimeParseException e) {
            throw new BadInput(node.where(), "\"" + node.asText() + "\" is not a date and time such as 2026-11-02T08:00.");
        }
    }

    static Map<String, Object> fields(GaugeReading r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("at", r.at().toString());
        out.put("bar", r.bar());
        out.put("waterCelsius", r.waterCelsius());
        return out;
    }
}
