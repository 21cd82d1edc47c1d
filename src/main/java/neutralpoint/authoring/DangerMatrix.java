package neutralpoint.authoring;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Danger;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.document.Node;

/**
 * Every danger against every way of telling it, for whoever adds one.
 *
 * @param rows           the dangers, the worst first
 * @param tellings       the kinds of telling that occur: the first question, other answers, readings, then the lists of a job file
 * @param unusedRedLines options of the first question that no danger names among its ways
 * @param untold         sentences about numbers, lists and sums that no danger uses
 */
public record DangerMatrix(List<DangerRow> rows, List<String> tellings, List<String> unusedRedLines, List<String> untold) {
    static final String FIRST_QUESTION = "first question";
    static final String ANSWER = "answers";
    static final String READING = "readings";
    private static final List<String> IN_FINDINGS = List.of(FIRST_QUESTION, ANSWER, READING);
    private static final String FINDINGS = "findings";

    /** A danger with every way in which it is told. */
    public record DangerRow(Danger danger, List<Telling> told) {
        long count(String telling) {
            return told.stream().filter(t -> t.telling().equals(telling)).count();
        }
    }

    /**
     * One way of telling a danger.
     *
     * @param by      the way in words
     * @param telling its kind: the first question, answers, readings, or the list of the job file that tells it, such as gauge
     * @param job     what the job file says, as it would be written on one line
     */
    public record Telling(String by, String telling, String job) {}

    /**
     * The matrix of a catalogue read from its folder: the compiled one has no ways.
     *
     * @param rules the rules that stand beside it
     */
    public static DangerMatrix of(Catalogue catalogue, List<RuleText> rules) {
        List<DangerRow> rows = catalogue.dangers().values().stream()
                .map(d -> new DangerRow(d, d.ways().stream().map(DangerMatrix::told).toList())).toList();
        Set<String> named = catalogue.dangers().values().stream().flatMap(d -> d.ways().stream())
                .flatMap(w -> redLines(w.job().asFields()).stream()).collect(Collectors.toSet());
        List<String> unused = catalogue.finding(FindingId.RED_LINES).optionIds().stream().filter(o -> !named.contains(o)).toList();
        return new DangerMatrix(rows, tellings(rows), unused, UntoldReadings.of(catalogue, rules));
    }

    /** False for the compiled catalogue, which does without the ways. */
    public boolean knowsWays() {
        return rows.stream().anyMatch(r -> !r.told().isEmpty());
    }

    private static List<String> tellings(List<DangerRow> rows) {
        Set<String> lists = rows.stream().flatMap(r -> r.told().stream()).map(Telling::telling)
                .filter(t -> !IN_FINDINGS.contains(t)).collect(Collectors.toCollection(LinkedHashSet::new));
        return Stream.concat(IN_FINDINGS.stream(), lists.stream()).toList();
    }

    private static Telling told(Danger.Way way) {
        Node.Fields job = way.job().asFields();
        return new Telling(way.by(), telling(job), words(job));
    }

    private static String telling(Node.Fields job) {
        return job.fields().keySet().stream().filter(name -> !name.equals(FINDINGS)).findFirst().orElseGet(() -> {
            if (!redLines(job).isEmpty()) {
                return FIRST_QUESTION;
            }
            return findings(job).values().stream().anyMatch(Node.Numeral.class::isInstance) ? READING : ANSWER;
        });
    }

    private static List<String> redLines(Node.Fields job) {
        Node given = findings(job).get(FindingId.RED_LINES);
        return given == null ? List.of() : given.asTexts();
    }

    private static Map<String, Node> findings(Node.Fields job) {
        return job.find(FINDINGS).map(n -> n.asFields().fields()).orElse(Map.of());
    }

    private static String words(Node.Fields job) {
        return job.fields().entrySet().stream().flatMap(e -> e.getKey().equals(FINDINGS)
                ? findings(job).entrySet().stream() : Stream.of(e)).map(e -> e.getKey() + ": " + written(e.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String written(Node node) {
        if (node instanceof Node.Fields f) {
            return f.fields().entrySet().stream().map(e -> e.getKey() + ": " + written(e.getValue())).collect(Collectors.joining(", ", "{", "}"));
        }
        return node instanceof Node.Items i ? i.items().stream().map(DangerMatrix::written).collect(Collectors.joining(", ", "[", "]"))
                : node.asText();
    }
}
