package neutralpoint.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.document.BadInput;
import neutralpoint.document.Json;
import neutralpoint.document.Nearest;
import neutralpoint.job.Job;
import neutralpoint.report.WorkPlanCompare;
import neutralpoint.report.WorkPlanJson;
import neutralpoint.report.WorkPlanMarkdown;
import neutralpoint.report.WorkPlanText;
import neutralpoint.workplan.SystemConversion;
import neutralpoint.workplan.WorkPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The method statement for one house. */
@Command(name = "workplan", mixinStandardHelpOptions = true,
        description = "Plan the work for this house: steps in order, what to bring and agree, and the figures.")
final class WorkPlanCommand implements Callable<Integer> {
    private static final int WIDTH = 78;

    enum PlanFormat { text, markdown, json }

    @Parameters(paramLabel = "JOB.json", description = "the job file")
    private Path file;

    @Option(names = "--format", defaultValue = "text", description = "text, markdown or json")
    private PlanFormat format;

    @Option(names = "--method", description = "plan this method of cleansing instead of the one recommended")
    private String method;

    @Option(names = "--sums", description = "print the arithmetic of each figure")
    private boolean sums;

    @Option(names = "--compare", split = ",", paramLabel = "A,B",
            description = "two methods of cleansing, or open-vented,sealed, side by side")
    private List<String> compare;

    @Override
    public Integer call() {
        Knowledge knowledge = Knowledge.load();
        Job job = knowledge.check().read(file);
        if (compare != null) {
            return compared(knowledge, job);
        }
        Optional.ofNullable(method).ifPresent(m -> known(m, knowledge.catalogue()));
        WorkPlan plan = WorkPlan.of(knowledge.assessor(), knowledge.catalogue(), job, Optional.ofNullable(method));
        System.out.println(switch (format) {
            case text -> WorkPlanText.of(plan, knowledge.catalogue(), WIDTH, sums);
            case markdown -> WorkPlanMarkdown.of(plan, knowledge.catalogue()).stripTrailing();
            case json -> Json.pretty(WorkPlanJson.of(plan)).stripTrailing();
        });
        return plan.assessment().stops().isEmpty() ? 0 : 1;
    }

    private int compared(Knowledge knowledge, Job job) {
        if (compare.size() != 2) {
            throw new BadInput("--compare takes two names with a comma, such as machine-flush,mains-pressure-flush.");
        }
        boolean sides = SystemConversion.SIDES.containsAll(compare);
        if (!sides) {
            compare.forEach(m -> known(m, knowledge.catalogue()));
        }
        WorkPlan one = plan(knowledge, job, compare.get(0), sides);
        WorkPlan other = plan(knowledge, job, compare.get(1), sides);
        System.out.println(WorkPlanCompare.of(compare, one, other, knowledge.catalogue(), WIDTH));
        return one.assessment().stops().isEmpty() ? 0 : 1;
    }

    private static WorkPlan plan(Knowledge knowledge, Job job, String name, boolean side) {
        return side ? WorkPlan.of(knowledge.assessor(), knowledge.catalogue(), SystemConversion.asIf(job, name), Optional.empty())
                : WorkPlan.of(knowledge.assessor(), knowledge.catalogue(), job, Optional.of(name));
    }

    private static void known(String method, Catalogue catalogue) {
        if (!catalogue.methods().containsKey(method)) {
            throw new BadInput("\"" + method + "\" is not a known method of cleansing" + Nearest.hint(method, catalogue.methods().keySet()));
        }
    }
}
