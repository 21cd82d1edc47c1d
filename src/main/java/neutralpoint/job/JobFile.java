package neutralpoint.job;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import neutralpoint.document.BadInput;
import neutralpoint.document.Documents;
import neutralpoint.document.Json;
import neutralpoint.document.Node;
import neutralpoint.document.SafeFile;

/**
 * Job files: JSON with the job's id, the house, its radiators and its findings. A case study is a
 * job file too; what it adds for teaching is passed over here.
 */
public final class JobFile {
    /** The format this program reads and writes; a file that names none is of the first. */
    private static final int FORMAT = 1;
    private static final Set<String> FIELDS = Set.of("format", "job", "house", "radiators", "gauge", "emergencies", "findings", "asking",
            "$schema", "title", "expected", "teaching", "source");

    private JobFile() {}

    /**
     * A job as it stands in its file: shape checked, findings not yet held against the catalogue.
     *
     * @param findings    the findings exactly as written
     * @param emergencies the lines of the log of emergencies exactly as written
     */
    public record UncheckedJob(String id, String house, List<Radiator> radiators, Node.Fields findings, Optional<String> asking,
            List<GaugeReading> gauge, List<Node> emergencies) {}

    public static UncheckedJob read(Path file) {
        return draft(Documents.readJson(file), nameOf(file));
    }

    /** Reads a draft from a JSON value; {@code otherwise} is the id of a job that gives none. */
    public static UncheckedJob draft(Node root, String otherwise) {
        Node.Fields fields = root.asFields().only(FIELDS);
        fields.find("format").ifPresent(JobFile::requireKnown);
        Node.Fields findings = fields.find("findings").map(Node::asFields).orElseThrow(() -> new BadInput(
                fields.where(), "\"findings\" is missing; a job holds {\"findings\": {finding: answer, …}}."));
        return new UncheckedJob(fields.findText("job").orElse(otherwise), fields.findText("house").orElse(""),
                radiators(fields), findings, fields.findText("asking"), GaugeLog.read(fields), EmergencyLog.lines(fields));
    }

    private static void requireKnown(Node format) {
        double number = format.asNumber();
        if (number > FORMAT) {
            throw new BadInput(format.where(), "this job file is of format " + format.asText() + " and this program reads formats up to "
                    + FORMAT + "; open it with a newer program.");
        }
        if (number != FORMAT) {
            throw new BadInput(format.where(), "\"format\" is " + format.asText() + "; 1 belongs there, or leave it out.");
        }
    }

    /** The job's id when its file gives none: the file's name without its ending. */
    public static String nameOf(Path file) {
        return file.getFileName().toString().replaceFirst("\\.json$", "");
    }

    private static List<Radiator> radiators(Node.Fields fields) {
        return RadiatorTable.read(fields.find("radiators").map(n -> n.asItems().items()).orElse(List.of()));
    }

    public static void write(Path file, Job job) {
        SafeFile.write(file, Json.pretty(fields(job)));
    }

    /** The job as JSON fields, as {@link #read} takes them back. */
    public static Map<String, Object> fields(Job job) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("job", job.id());
        if (!job.house().isEmpty()) {
            out.put("house", job.house());
        }
        if (!job.radiators().isEmpty()) {
            out.put("radiators", job.radiators().stream().map(RadiatorTable::fields).toList());
        }
        if (!job.gauge().isEmpty()) {
            out.put("gauge", job.gauge().stream().map(GaugeLog::fields).toList());
        }
        if (!job.emergencies().isEmpty()) {
            out.put("emergencies", EmergencyLog.fields(job.emergencies()));
        }
        job.asking().ifPresent(finding -> out.put("asking", finding));
        Map<String, Object> findings = new LinkedHashMap<>();
        job.answers().forEach((finding, answer) -> findings.put(finding, value(answer)));
        out.put("findings", findings);
        return out;
    }

    /** An answer as it stands in a job file. */
    public static Object value(Answer answer) {
        if (answer instanceof Answer.One one) {
            return one.choice();
        }
        if (answer instanceof Answer.Several several) {
            return several.choices();
        }
        if (answer instanceof Answer.Reading reading) {
            return reading.value();
        }
        return answer instanceof Answer.ByRadiator by ? by.choices() : "not-checked";
    }
}
