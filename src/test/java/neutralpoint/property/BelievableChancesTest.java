package neutralpoint.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.authoring.Reliability;
import neutralpoint.authoring.Robustness;
import neutralpoint.authoring.Score;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * A chance means what it says: of the causes called 80 in 100, about eighty in a hundred are so, in houses of which a third of the
 * findings is hidden and one is wrong. Only houses are judged on which the weights were not fitted (every third), with other seeds.
 */
class BelievableChancesTest {
    /** A band with fewer causes says nothing. */
    private static final int ENOUGH = 50;
    private static final List<CaseStudy> KEPT_BACK = everyThird();
    private static final Robustness TRIALS = new Robustness(Shared.RULES, Shared.CATALOGUE);

    @TestFactory
    Stream<DynamicTest> eachBandOfChancesComesTrueAsOftenAsItSays() {
        return LongStream.of(2001, 2002, 2003).mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () ->
                assertThat(judged(seed).bands().stream().filter(b -> b.causes() >= ENOUGH && b.from() > 0))
                        .isNotEmpty().allSatisfy(b -> assertThat(b.isBelievable()).as("%s", b).isTrue())));
    }

    @Test
    void chancesAreBetterThanSayingHowCommonAFaultIsAndThanTakingDecibansAtTheirWord() {
        List<Score.JudgedCase> judged = TRIALS.someHidden(KEPT_BACK, 1.0 / 3, 1, 2004);
        Reliability chances = Reliability.of(judged);

        assertThat(chances.brier()).isLessThan(chances.baseRate() * 0.75).isLessThan(Reliability.takenAtTheirWord(judged).brier() * 0.8);
    }

    private static Reliability judged(long seed) {
        return Reliability.of(TRIALS.someHidden(KEPT_BACK, 1.0 / 3, 1, seed));
    }

    private static List<CaseStudy> everyThird() {
        List<CaseStudy> all = Shared.allCases();
        return IntStream.range(0, all.size()).filter(i -> i % 3 == 2).mapToObj(all::get).filter(c -> !c.causes().isEmpty()).toList();
    }
}
