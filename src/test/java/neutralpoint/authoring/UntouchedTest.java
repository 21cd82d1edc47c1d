package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import neutralpoint.Shared;
import neutralpoint.catalogue.JobCheck;
import org.junit.jupiter.api.Test;

/** The published reports that no rule is changed for are named beside them, and are about a third. */
class UntouchedTest {
    private static final Path PUBLISHED = Path.of("src/test/resources/published");
    private static final Untouched UNTOUCHED = Untouched.in(PUBLISHED).orElseThrow();

    @Test
    void theUntouchedAndTheRestAreAllReports() {
        List<Score.JudgedCase> all = CaseStudy.under(List.of(PUBLISHED), new JobCheck(Shared.CATALOGUE)).stream()
                .map(c -> new Score.JudgedCase(c, Shared.assessed(c))).toList();

        List<Score.JudgedCase> untouched = UNTOUCHED.of(all, true);

        assertThat(untouched.size()).isBetween(all.size() * 3 / 10, all.size() * 4 / 10);
        assertThat(UNTOUCHED.of(all, false)).hasSize(all.size() - untouched.size()).doesNotContainAnyElementsOf(untouched);
    }

    @Test
    void aFolderThatNamesNoneHasNone() {
        assertThat(Untouched.in(Path.of("cases"))).isEmpty();
    }
}
