package neutralpoint.catalogue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import neutralpoint.document.BadInput;
import neutralpoint.document.Decimals;
import neutralpoint.document.Lookup;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;
import neutralpoint.document.Where;
import neutralpoint.job.Answer;
import neutralpoint.job.EmergencyLog;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.job.Quantity;
import neutralpoint.job.UnitConversion;

/** Holds what was answered against the catalogue and types it; refuses with one clear sentence. */
public final class JobCheck {
    private static final String NOT_CHECKED = "not-checked";
    private static final String NONE = "none";

    private final Catalogue catalogue;

    public JobCheck(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** What ids of older files are called today. */
    public Renames renames() {
        return catalogue.renames();
    }

    public Job read(Path file) {
        return check(JobFile.read(file));
    }

    public Job check(JobFile.UncheckedJob draft) {
        Map<String, Answer> answers = new LinkedHashMap<>();
        draft.findings().fields().forEach((written, node) -> {
            Where where = Lookup.known(draft.findings().names(), written);
            String id = catalogue.renames().finding(written);
            if (!catalogue.findings().containsKey(id)) {
                throw new BadInput(where, "\"" + id + "\" is not a known finding"
                        + Nearest.hint(id, catalogue.findings().keySet()));
            }
            if (answers.put(id, answer(catalogue.finding(id), node)) != null) {
                throw new BadInput(where, "\"" + id + "\" is answered twice, once by an older name; leave one of them out.");
            }
        });
        Optional<String> asking = draft.asking().map(catalogue.renames()::finding);
        asking.ifPresent(catalogue::finding);
        return together(new Job(draft.id(), draft.house(), draft.radiators(), answers, asking, draft.gauge(),
                EmergencyLog.read(draft.emergencies(), catalogue.emergencies().keySet())),
                draft.findings().where());
    }

    /** Refuses readings that cannot both be right, naming both. */
    public Job together(Job job, Where where) {
        job.answers().forEach((id, answer) -> catalogue.finding(id).notBelow().ifPresent(other -> {
            if (answer instanceof Answer.Reading upper && job.answer(other).orElse(null) instanceof Answer.Reading lower
                    && upper.value() < lower.value()) {
                throw new BadInput(where, "\"" + id + "\" at " + Decimals.given(upper.value()) + " " + upper.unit() + " cannot lie below \""
                        + other + "\" at " + Decimals.given(lower.value()) + " " + lower.unit() + "; read both again.");
            }
        }));
        return job;
    }

    /** Types one answer as it was written. */
    public Answer answer(Finding finding, Node node) {
        if (node instanceof Node.Text t && t.text().equals(NOT_CHECKED)) {
            return Answer.NOT_CHECKED;
        }
        return switch (finding.type()) {
            case YES_NO, ONE_OF -> new Answer.One(option(finding, node));
            case SEVERAL_OF -> several(finding, node);
            case NUMBER -> reading(finding, node);
            case PER_RADIATOR -> byRadiator(finding, node);
        };
    }

    private String option(Finding finding, Node node) {
        if (!(node instanceof Node.Text || node instanceof Node.Flag)) {
            throw new BadInput(node.where(), "\"" + finding.id() + "\" takes one word, not " + node.kind()
                    + "; " + choices(finding));
        }
        String word = catalogue.renames().option(finding.id(), node.asText());
        if (finding.option(word).isEmpty()) {
            throw new BadInput(node.where(), "\"" + word + "\" is not an answer to \"" + finding.id() + "\""
                    + Nearest.to(word, finding.optionIds()).map(n -> "; did you mean \"" + n + "\"? Otherwise ").orElse("; ")
                    + choices(finding));
        }
        return word;
    }

    private static String choices(Finding finding) {
        return "one of " + String.join(", ", finding.optionIds()) + " or not-checked belongs there.";
    }

    private Answer several(Finding finding, Node node) {
        if (node instanceof Node.Text t && t.text().equals(NONE)) {
            return new Answer.Several(List.of());
        }
        List<Node> items = node instanceof Node.Items i ? i.items() : List.of(node);
        if (items.size() == 1 && items.get(0) instanceof Node.Text t && t.text().equals(NONE)) {
            return new Answer.Several(List.of());
        }
        return new Answer.Several(items.stream().map(item -> option(finding, item)).toList());
    }

    private static Answer reading(Finding finding, Node node) {
        if (node instanceof Node.Fields f) {
            f.only(Set.of("value", "unit"));
            return reading(finding, new Quantity(f.get("value").asNumber(), f.findText("unit").orElse("")), node.where());
        }
        return reading(finding, Quantity.of(node, finding.id(), finding.unit()), node.where());
    }

    private static Answer reading(Finding finding, Quantity q, Where where) {
        double converted = UnitConversion.in(finding.unit(), q, finding.id(), where);
        if (converted < finding.lowest() || converted > finding.highest()) {
            throw new BadInput(where, "\"" + finding.id() + "\" cannot be " + Decimals.given(q.value()) + " "
                    + (q.unit().isEmpty() ? finding.unit() : q.unit())
                    + (converted == q.value() ? "" : ", which is " + Decimals.given(converted) + " " + finding.unit())
                    + "; a plausible reading lies between " + Decimals.given(finding.lowest()) + " and "
                    + Decimals.given(finding.highest()) + " " + finding.unit() + ".");
        }
        return new Answer.Reading(converted, finding.unit());
    }

    private Answer byRadiator(Finding finding, Node node) {
        if (!(node instanceof Node.Fields f)) {
            throw new BadInput(node.where(), "\"" + finding.id() + "\" takes one answer for each radiator, like {\"lounge\": \""
                    + finding.optionIds().get(0) + "\"}, not " + node.kind() + ".");
        }
        Map<String, String> choices = new LinkedHashMap<>();
        f.fields().forEach((radiator, answer) -> choices.put(radiator, option(finding, answer)));
        return new Answer.ByRadiator(choices);
    }
}
