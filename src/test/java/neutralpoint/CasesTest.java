package neutralpoint;

import org.junit.jupiter.api.Test;

/** Every case study, judged. */
class CasesTest {
    @Test
    void print() {
        Shared.files("cases", ".json").stream().map(CaseScores::of).forEach(c -> System.out.println(c.line()));
        Shared.files("src/test/resources/published", ".json").stream().map(CaseScores::of).forEach(c -> System.out.println(c.line()));
    }
}
