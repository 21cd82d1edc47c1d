package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What a weight of evidence is worth as a chance. Weights are in decibans; ten are odds of ten to one. */
class ChancesTest {
    private record Weighed(double decibans, boolean isSettled, boolean isExcluded) implements Chances.Weight {}

    private static Weighed weighing(double decibans) {
        return new Weighed(decibans, false, false);
    }

    @Test
    void signsOfOneFaultComeTogetherSoTenToOneIsPromisedAsLess() {
        assertThat(Chances.of(List.of(weighing(10)))[0]).isBetween(0.7, 10.0 / 11);
    }

    @Test
    void twoFaultsWithTheSameSignsAreHalfAsBelievableAsOneAlone() {
        double alone = Chances.of(List.of(weighing(10), weighing(-20)))[0];
        double[] rivals = Chances.of(List.of(weighing(10), weighing(10)));

        assertThat(rivals[0]).isEqualTo(rivals[1], within(1e-12)).isLessThan(alone);
    }

    @Test
    void anExcludedCauseIsNobodysRival() {
        double alone = Chances.of(List.of(weighing(10), weighing(-30)))[0];

        assertThat(Chances.of(List.of(weighing(10), new Weighed(25, false, true)))).containsExactly(alone, 0.001);
    }

    @Test
    void aDecidingTestIsWorthMoreThanAnyButTheGreatestSum() {
        double[] chances = Chances.of(List.of(new Weighed(-5, true, false), weighing(12)));

        assertThat(chances[0]).isGreaterThan(chances[1]).isLessThan(1);
    }

    @Test
    void moreWeightIsAlwaysMoreChanceAndAHeavierRivalIsAlwaysLess() {
        Random random = new Random(1968);
        for (int i = 0; i < 2000; i++) {
            List<Weighed> house = IntStream.range(0, 2 + random.nextInt(6)).mapToObj(k -> weighing(-30 + random.nextInt(60))).toList();
            List<Weighed> more = IntStream.range(0, house.size()).mapToObj(k -> k == 0 ? weighing(house.get(0).decibans() + 3) : house.get(k)).toList();
            double[] before = Chances.of(house);
            double[] after = Chances.of(more);
            assertThat(after[0]).as("%s", house).isGreaterThan(before[0]);
            for (int k = 1; k < before.length; k++) {
                assertThat(after[k]).as("%s", house).isLessThanOrEqualTo(before[k]);
            }
        }
    }
}
