package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Phase;
import neutralpoint.catalogue.Renames;
import neutralpoint.rulebase.fact.Evidence;
import neutralpoint.rulebase.fact.Observed;
import neutralpoint.rulebase.fact.Strength;
import org.junit.jupiter.api.Test;

/**
 * How evidence is added up, worked by hand. The figures are decibans, ten times the base-ten
 * logarithm of the odds, as I. J. Good used them in <i>Probability and the Weighing of Evidence</i>
 * (1950): 10 decibans are odds of ten to one, and independent evidence simply adds.
 * Holds {@link CauseWeighing}.
 */
class LedgerTest {
    private static final double EXACT = 1e-12;
    private static final String CAUSE = "a-cause";

    @Test
    void twoObservationsOfOneFamilyCountTheStrongerInFullAndTheOtherAQuarter() {
        Ledger ledger = ledger(0, List.of(supports("water/colour", Strength.GOOD), supports("water/magnet", Strength.SOME)));

        assertThat(ledger.decibans()).isEqualTo(6.75, within(EXACT)); // 6 + 3/4
    }

    @Test
    void twoObservationsOfDifferentFamiliesCountInFull() {
        Ledger ledger = ledger(0, List.of(supports("water/colour", Strength.GOOD), supports("noise/kettling", Strength.SOME)));

        assertThat(ledger.decibans()).isEqualTo(9, within(EXACT)); // 6 + 3
    }

    @Test
    void whatSpeaksAgainstIsTakenOff() {
        Ledger ledger = ledger(0, List.of(against("water/colour", Strength.STRONG)));

        assertThat(ledger.decibans()).isEqualTo(-10, within(EXACT));
        assertThat(Ledger.probability(ledger.decibans())).isEqualTo(1.0 / 11, within(EXACT));
    }

    @Test
    void aFamilyIsDampedOnEachSideByItself() {
        Ledger ledger = ledger(0, List.of(supports("water/colour", Strength.GOOD), against("water/magnet", Strength.STRONG),
                against("water/smell", Strength.SOME)));

        assertThat(ledger.decibans()).isEqualTo(-4.75, within(EXACT)); // 6 - 10 - 3/4
    }

    @Test
    void thePriorIsWhereTheSumBegins() {
        Ledger ledger = ledger(-13, List.of(supports("water/colour", Strength.GOOD), against("noise/kettling", Strength.SLIGHT)));

        assertThat(ledger.decibans()).isEqualTo(-8, within(EXACT)); // -13 + 6 - 1
    }

    @Test
    void theOrderOfEvidenceMeansNothingAndTheStrongestIsListedFirst() {
        Derived<Evidence> some = supports("water/magnet", Strength.SOME);
        Derived<Evidence> good = supports("water/colour", Strength.GOOD);

        assertThat(ledger(0, List.of(some, good)).decibans()).isEqualTo(ledger(0, List.of(good, some)).decibans());
        assertThat(ledger(0, List.of(some, good)).entries()).extracting(WeighedEvidence::decibans).containsExactly(6.0, 0.75);
    }

    @Test
    void oneMoreSupportingObservationNeverLowersTheSum() {
        Derived<Evidence> first = supports("water/colour", Strength.SLIGHT);
        for (Strength strength : Strength.values()) {
            assertThat(ledger(0, List.of(first, supports("water/magnet", strength))).decibans())
                    .isGreaterThan(ledger(0, List.of(first)).decibans());
        }
    }

    @Test
    void aDecidingTestBeatsAnySum() {
        Derived<Evidence> settles = evidence("water/test", Evidence.settles(CAUSE, seen("water/test")));
        List<Derived<Evidence>> contrary = List.of(settles, against("noise/kettling", Strength.DECISIVE),
                against("pump/hum", Strength.DECISIVE), against("loft/level", Strength.DECISIVE));

        Ledger ledger = ledger(0, contrary);

        assertThat(ledger.decibans()).as("the sum alone is strongly against").isEqualTo(-40, within(EXACT));
        assertThat(ledger.has(Evidence.Kind.SETTLES)).isTrue();
        Assessment.CauseStanding standing = standing(contrary);
        assertThat(standing.status()).isEqualTo("settled");
        assertThat(standing.probability()).as("one reading in a house may be wrong").isBetween(0.8, 0.99);
    }

    @Test
    void twoDecidingTestsThatDisagreeLeaveTheSumStanding() {
        Assessment.CauseStanding standing = standing(List.of(
                evidence("water/test", Evidence.settles(CAUSE, seen("water/test"))),
                evidence("pump/test", Evidence.excludes(CAUSE, seen("pump/test"))),
                supports("noise/kettling", Strength.STRONG)));

        assertThat(standing.status()).isEqualTo("likely");
        assertThat(standing.decibans()).isEqualTo(10, within(EXACT)); // 20 - 20 + 10
        assertThat(standing.probability()).as("ten to one on would be too much to promise").isBetween(0.8, 10.0 / 11);
    }

    @Test
    void aWeightIsTenTimesTheLogarithmOfTheOdds() {
        assertThat(Ledger.probability(0)).isEqualTo(0.5, within(EXACT)); // evens
        assertThat(Ledger.probability(10)).isEqualTo(10.0 / 11, within(EXACT)); // ten to one on
        assertThat(Ledger.probability(-20)).isEqualTo(1.0 / 101, within(EXACT)); // a hundred to one against
        assertThat(Ledger.probability(3)).as("3 decibans are odds of about two to one").isEqualTo(2.0 / 3, within(0.001));
    }

    /** Where a cause with even odds to begin with stands, on a system where it can be. */
    private static Assessment.CauseStanding standing(List<Derived<Evidence>> evidence) {
        Cause cause = new Cause(CAUSE, "A cause", "a cause", "", 0, List.of(), "valve-repair", Optional.empty(), List.of(), Phase.FLOW, "", List.of(), "", "");
        Catalogue catalogue = new Catalogue(Map.of(), Map.of(CAUSE, cause), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(),
                Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Renames.NONE);
        Assessment.RecognisedSystem system = new Assessment.RecognisedSystem("", "", "", List.of(), List.of(), 1, Map.of(), Set.of(), Set.of());
        return CauseWeighing.ranked(CauseWeighing.weigh(catalogue, system, evidence, LedgerTest::family, new HashMap<>())).get(0);
    }

    private static Ledger ledger(int prior, List<Derived<Evidence>> evidence) {
        return Ledger.of(prior, evidence, LedgerTest::family, ExplainingAway.NOTHING);
    }

    /** In these examples a finding is named family/finding. */
    private static String family(String finding) {
        return finding.substring(0, finding.indexOf('/'));
    }

    private static Derived<Evidence> supports(String finding, Strength strength) {
        return evidence(finding, Evidence.supports(CAUSE, strength, seen(finding)));
    }

    private static Derived<Evidence> against(String finding, Strength strength) {
        return evidence(finding, Evidence.against(CAUSE, strength, seen(finding)));
    }

    private static Observed seen(String finding) {
        return new Observed(finding, "yes");
    }

    private static Derived<Evidence> evidence(String finding, Evidence evidence) {
        return new Derived<>(RuleInfo.of("rule for " + finding, "evidence", Map.of()), evidence);
    }
}
