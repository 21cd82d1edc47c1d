package neutralpoint;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import neutralpoint.document.Documents;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Fault-and-fix reports published by others, encoded only from what each report says; the source
 * stands in each file. Reports that do not come out right are listed with the reason, and the list
 * must be exact: one that comes right is taken off it.
 */
class PublishedCasesTest {
    private static final Set<String> MISSES =
            Documents.readJson(Path.of("src/test/resources/known-misses.json")).asFields().fields().keySet();

    private static List<CaseScores> scores() {
        return Shared.files("src/test/resources/published", ".json").stream().map(CaseScores::of).toList();
    }

    @TestFactory
    Stream<DynamicTest> eachComesOutRightOrIsAKnownMiss() {
        return scores().stream().map(s -> DynamicTest.dynamicTest(s.id(), () ->
                assertThat(s.courseAccepted() && s.causeInTopThree()).as(s.line()).isEqualTo(!MISSES.contains(s.id()))));
    }

    @Test
    void scoreIsPrinted() {
        List<CaseScores> scores = scores();
        scores.stream().filter(s -> MISSES.contains(s.id())).forEach(s -> System.out.println(s.line()));
        System.out.printf("Published cases: %d; accepted course %d; cause in top three %d; unsafe advice %d%n", scores.size(),
                scores.stream().filter(CaseScores::courseAccepted).count(),
                scores.stream().filter(CaseScores::causeInTopThree).count(), scores.stream().filter(CaseScores::unsafe).count());
        assertThat(scores).noneMatch(CaseScores::unsafe);
    }
}
