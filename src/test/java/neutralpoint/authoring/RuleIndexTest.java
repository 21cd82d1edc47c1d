package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import neutralpoint.Shared;
import org.junit.jupiter.api.Test;

/** The list that people look rules up in. */
class RuleIndexTest {
    private static final List<RuleText> RULES = RuleReader.all(Path.of("rules"));

    /** A folder that the index does not know would leave its rules out without a word. */
    @Test
    void everyRuleIsListedOnceWithItsSentence() {
        assertThat(RuleIndex.markdown(Shared.CATALOGUE, RULES).lines().filter(l -> l.startsWith("- `")))
                .containsExactlyInAnyOrderElementsOf(RULES.stream().map(r -> "- `" + r.id() + "` " + RuleSentence.of(r, Shared.CATALOGUE)).toList());
    }
}
