package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import neutralpoint.Shared;
import neutralpoint.catalogue.JobCheck;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A consultation answered from each teaching case: it comes to an end, and soon. All cases: {@code neutralpoint rules questions}. */
class QuestionCountTest {
    private static final int PATIENCE = 40;
    private static final int WANTED_MEDIAN = 8;

    private final QuestionCount count = new QuestionCount(Shared.ASSESSOR, Shared.CATALOGUE);

    @Tag("slow")
    @Test
    void theCourseStandsAfterFewQuestions() {
        DescriptiveStatistics needed = new DescriptiveStatistics();
        for (Path file : Shared.teachingCases()) {
            QuestionCount.Count own = count.chosen(CaseStudy.read(file, new JobCheck(Shared.CATALOGUE)).job());
            assertThat(own.asked()).as(file.toString()).isLessThan(PATIENCE);
            needed.addValue(own.needed());
        }
        assertThat(needed.getPercentile(50)).isLessThanOrEqualTo(WANTED_MEDIAN);
    }
}
