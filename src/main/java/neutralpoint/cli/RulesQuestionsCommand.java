package neutralpoint.cli;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.authoring.QuestionCount;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Counts questions. */
@Command(name = "questions", mixinStandardHelpOptions = true, description = {"Count the questions each case takes until its course stands and stays:",
        "by this tool's choice, in the order of a visit, and in random order."})
final class RulesQuestionsCommand implements Callable<Integer> {
    @Mixin
    private AuthoringOptions authoring;

    @Option(names = "--seeds", defaultValue = "20", description = "random orders tried (default: ${DEFAULT-VALUE})")
    private int seeds;

    @Option(names = "--every", defaultValue = "1", description = "only every so-manieth case, for a quicker look (default: all)")
    private int every;

    @Override
    public Integer call() {
        Knowledge knowledge = Knowledge.load();
        QuestionCount count = new QuestionCount(knowledge.assessor(), knowledge.catalogue());
        DescriptiveStatistics asked = new DescriptiveStatistics();
        DescriptiveStatistics chosen = new DescriptiveStatistics();
        DescriptiveStatistics byPlace = new DescriptiveStatistics();
        DescriptiveStatistics random = new DescriptiveStatistics();
        System.out.printf("%-28s %6s %7s %9s %8s%n", "case", "asked", "needed", "by place", "random");
        int reached = 0;
        List<CaseStudy> all = authoring.cases(knowledge.check());
        List<CaseStudy> cases = IntStream.range(0, all.size()).filter(i -> i % Math.max(1, every) == 0).mapToObj(all::get).toList();
        for (CaseStudy c : cases) {
            QuestionCount.Count own = count.chosen(c.job());
            QuestionCount.Count fixed = count.byPlace(c.job());
            double[] drawn = IntStream.range(0, seeds).parallel().mapToDouble(seed -> count.random(c.job(), seed).needed()).toArray();
            DescriptiveStatistics here = new DescriptiveStatistics(drawn);
            asked.addValue(own.asked());
            chosen.addValue(own.needed());
            byPlace.addValue(fixed.needed());
            for (double d : drawn) {
                random.addValue(d);
            }
            reached += own.reached() ? 1 : 0;
            System.out.printf("%-28s %6d %7d %9d %8.0f%s%n", c.id(), own.asked(), own.needed(), fixed.needed(), here.getPercentile(50),
                    (own.reached() ? "" : "  another course") + (own.needed() > fixed.needed() ? "  slower than by place" : ""));
        }
        System.out.printf("%n%-28s %6s %6s %6s %6s %6s%n", "", "least", "10 %", "median", "90 %", "most");
        line("asked by this tool", asked);
        line("needed: this tool's choice", chosen);
        line("needed: by place", byPlace);
        line("needed: random order", random);
        System.out.printf("%d of %d consultations end on the course that all findings lead to%n", reached, cases.size());
        return 0;
    }

    private static void line(String what, DescriptiveStatistics s) {
        System.out.printf("%-28s %6.0f %6.0f %6.0f %6.0f %6.0f%n", what, s.getMin(), s.getPercentile(10), s.getPercentile(50),
                s.getPercentile(90), s.getMax());
    }
}
