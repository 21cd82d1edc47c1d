package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import neutralpoint.Shared;
import org.junit.jupiter.api.Test;

/** The index that people look rules up in is the one the rules make. */
class RuleIndexTest {

    /** A folder that the index does not know would leave its rules out without a word. */
    @Test
    void everyRuleIsIndexed() {
        assertThat(RuleReader.all(Path.of("rules"))).extracting(RuleText::folder).isSubsetOf(RuleIndex.STAGES);
    }

    @Test
    void theIndexIsInStep() {
        assertThat(Path.of("rules/INDEX.md")).as("run: neutralpoint rules index")
                .hasContent(RuleIndex.markdown(Shared.CATALOGUE, RuleReader.all(Path.of("rules"))));
    }
}
