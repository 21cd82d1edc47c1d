package neutralpoint.authoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import neutralpoint.Shared;
import neutralpoint.document.Where;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What evidence says is what it concludes. */
class RuleSentenceTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            sign  | Black bleed water   | Evidence.supports('sludge-throughout', GOOD, $x)    | Black bleed water speaks well for sludge throughout.
            signs | Cold bases          | Evidence.supports('sludge-throughout', SLIGHT, $x)  | Cold bases speak slightly for sludge throughout.
            sign  | A pump heard turning | Evidence.against('pump-seized', DECISIVE, $x)      | A pump heard turning speaks almost decisively against a seized pump.
            sign  | A blocked vent end  | Evidence.settles('vent-blocked', $x)                | A blocked vent end settles it: a blocked vent.
            signs | Two open pipes      | Evidence.excludes('vent-blocked', $x)               | Two open pipes rule out a blocked vent.
            sign  | A cold return       | Evidence.supports('diverter-letting-by', SOME, $x)  | A cold return speaks somewhat for a diverter letting by.
            """)
    void theSentenceFollowsFromTheConclusion(String note, String sign, String conclusion, String sentence) {
        assertThat(RuleSentence.of(rule(Map.of(note, sign), conclusion.replace('\'', '"')), Shared.CATALOGUE)).isEqualTo(sentence);
    }

    @Test
    void wordsOfItsOwnStand() {
        assertThat(RuleSentence.of(rule(Map.of("says", "In its own words."), "Evidence.excludes(\"vent-blocked\", $x)"), Shared.CATALOGUE))
                .isEqualTo("In its own words.");
    }

    private static RuleText rule(Map<String, String> notes, String conclusion) {
        Where where = new Where("trial.drl", 1);
        return new RuleText("trial", "evidence", "trial", where, notes, List.of(), Conclusion.read("insert(" + conclusion + ");", where));
    }
}
