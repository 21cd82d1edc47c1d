package neutralpoint.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;

/**
 * What went wrong during a call-out, as a job file holds it: {"at": "2026-11-02T08:00", "what": "steam"}, and
 * {"at": "2026-11-02T09:10", "over": "steam"} once it is over. Lines are only ever added.
 */
public final class EmergencyLog {
    private EmergencyLog() {}

    static List<Node> lines(Node.Fields job) {
        return job.find("emergencies").map(n -> n.asItems().items()).orElse(List.of());
    }

    /** The emergencies of a job file; {@code known} are the words that the catalogue has. */
    public static List<EmergencyTold> read(List<Node> lines, Set<String> known) {
        List<EmergencyTold> log = new ArrayList<>();
        for (Node line : lines) {
            Node.Fields f = line.asFields().only(Set.of("at", "what", "over"));
            if (f.has("what") == f.has("over")) {
                throw new BadInput(f.where(), "a line of \"emergencies\" says either \"what\" has happened or what is \"over\".");
            }
            boolean over = f.has("over");
            Node word = f.get(over ? "over" : "what");
            if (!known.contains(word.asText())) {
                throw new BadInput(word.where(), "\"" + word.asText() + "\" is not a known emergency"
                        + Nearest.hint(word.asText(), known));
            }
            if (over && !standing(log).contains(word.asText())) {
                throw new BadInput(word.where(), "\"" + word.asText() + "\" is said to be over, but no line before says that it happened.");
            }
            log.add(new EmergencyTold(GaugeLog.time(f.get("at")), word.asText(), over));
        }
        return List.copyOf(log);
    }

    /** The emergencies that have been told and not been said to be over, each once, in the order told. */
    public static Set<String> standing(List<EmergencyTold> log) {
        Set<String> standing = new LinkedHashSet<>();
        for (EmergencyTold told : log) {
            if (told.over()) {
                standing.remove(told.what());
            } else {
                standing.add(told.what());
            }
        }
        return standing;
    }

    /** The log as a job file and every page hold it. */
    public static List<Map<String, Object>> fields(List<EmergencyTold> log) {
        return log.stream().map(told -> {
            Map<String, Object> line = new LinkedHashMap<>();
            line.put("at", told.at().toString());
            line.put(told.over() ? "over" : "what", told.what());
            return line;
        }).toList();
    }
}
