package neutralpoint.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import neutralpoint.Shared;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.Test;

/**
 * Seven houses with readings: what the readings add up to, the sentence it is told in, and the cause that stands first.
 * The arithmetic is done by hand beside each. Water gains 2.18 % from 15 to 70 degrees and 2.12 % to 69 (steam tables).
 */
class ReadingsTest {

    /** 3.2 m of pump head, 18 % of it spent between the tees: 0.58 m. The vent stands 0.48 m over the water. */
    @Test
    void aPumpLiftsTheVentByItsHeadTimesTheResistanceBetweenTheTees() {
        Assessment a = assess(house("swallow-end"));
        assertThat(found(a, "vent-worked-out")).isEqualTo(new Answer.One("pumps-over"));
        assertThat(said(a, "vent-worked-out"))
                .isEqualTo("The pump lifts water 0.58 m up a vent of 0.48 m: it will pump over at this setting.");
        assertThat(chief(a)).isEqualTo("resistance-between-vent-and-feed");
    }

    /** The same pump and the same vent with 2 % between the tees: 0.06 m. */
    @Test
    void theSamePumpAndVentStayPutWithTheTeesSideBySide() {
        Assessment a = assess(house("swallow-end").with("tee-resistance-percent", new Answer.Reading(2, "percent")));
        assertThat(found(a, "vent-worked-out")).isEqualTo(new Answer.One("stays-put"));
        assertThat(said(a, "vent-worked-out")).isEqualTo("Vent margin 0.42 m: it will not pump over at this setting.");
    }

    /** A boiler with 25 % of the resistance between feed and vent, 5.2 m of head: 1.3 m down, and 1.1 m of water there. */
    @Test
    void aPumpThatDrawsOnTheVentBreathesThroughItOnceItIsEmptyToItsTee() {
        Assessment a = assess(house("plover-lodge"));
        assertThat(found(a, "vent-worked-out")).isEqualTo(new Answer.One("draws-air"));
        assertThat(said(a, "vent-worked-out"))
                .isEqualTo("The pump draws the vent down 1.3 m and its tee lies only 1.1 m under: air is drawn in.");
        assertThat(chief(a)).isEqualTo("air-drawn-in-at-vent");
    }

    /**
     * 110 litres gain 2.40. Sound, 8 litres of air at 2.01 bar absolute shrink to 5.60: 2.88, a gauge of 1.86. To reach
     * 2.8 takes 2.40 x 2.01 x 3.81 / 1.8 = 10.2 bar litres of air, a charge of 10.2 / 8 - 1.01 = 0.27 bar.
     */
    @Test
    void theHotGaugeTellsTheChargeOfAVesselNobodyHasMeasured() {
        Job job = house("sparrow-hill");
        assertThat(job.answer("vessel-charge-bar")).isEmpty();
        Assessment a = assess(job);
        assertThat(found(a, "vessel-worked-out")).isEqualTo(new Answer.One("charge-lost"));
        assertThat(said(a, "vessel-worked-out"))
                .isEqualTo("Hot gauge 2.8 bar; a sound vessel of 8 litres would show 1.86 bar. Vessel charge about 0.27 bar.");
        assertThat(chief(a)).isEqualTo("vessel-flat");
    }

    /** Once the charge is measured and right, the same gauge means that water does not reach all of the vessel. */
    @Test
    void theSameGaugeWithASoundChargeIsAVesselTheWaterDoesNotReach() {
        Assessment a = assess(house("sparrow-hill").with("vessel-charge-bar", new Answer.Reading(1, "bar")));
        assertThat(found(a, "vessel-worked-out")).isEqualTo(new Answer.One("too-small"));
        assertThat(said(a, "vessel-worked-out")).endsWith("Its charge is there, so water does not reach all of it.");
        assertThat(chief(a)).isEqualTo("vessel-too-small-or-branch-blocked");
    }

    /** Columns, pipes and boiler hold some 355 litres and gain 7.5; a vessel of 12 has 11.4 of air when cold. */
    @Test
    void aVesselFromASmallerJobIsTooSmallForColumnRadiators() {
        Assessment a = assess(house("harrier-court"));
        assertThat(found(a, "vessel-worked-out")).isEqualTo(new Answer.One("too-small"));
        assertThat(said(a, "vessel-worked-out"))
                .isEqualTo("Hot gauge 2.9 bar; a sound vessel of 12 litres would lift the safety valve. It is too small for this much water.");
        assertThat(chief(a)).isEqualTo("vessel-too-small-or-branch-blocked");
    }

    /** Water leaves the lounge at 57 and the base is at 36: less 3 for reading error, 18 of 34 degrees over the room are missing. */
    @Test
    void aBaseColderThanTheWaterThatLeavesIsBlockedByDirt() {
        Assessment a = assess(house("redpoll-drive"));
        assertThat(found(a, "cold-base-count")).isEqualTo(new Answer.One("few"));
        assertThat(found(a, "survey-pattern")).isEqualTo(new Answer.Several(List.of("old-radiators-restricted")));
        Calculation restricted = saying(a, "Base restricted: Lounge, Dining room, Front bedroom, 3 of 8.");
        assertThat(restricted.sums().get(0)).contains("Lounge: top 66, base 36", "about 53 in 100 of the base does nothing");
        assertThat(chief(a)).isEqualTo("sludge-in-one-or-few-radiators");
    }

    /** Drops of 3 to 4 degrees at the boiler's end of the pipe, 25 to 27 at the other. */
    @Test
    void nearRadiatorsThatHardlyCoolTheirWaterStarveTheFarOnes() {
        Assessment a = assess(house("linnet-road"));
        assertThat(found(a, "survey-pattern")).isEqualTo(new Answer.Several(List.of("far-starved")));
        assertThat(said(a, "survey-pattern")).isEqualTo("Pattern: far starved.");
        assertThat(saying(a, "Starved of flow: Bedroom 1, Bedroom 2, Shower room, 3 of 9.").grade()).isEqualTo(Calculation.Grade.WARN);
        assertThat(chief(a)).isEqualTo("unbalanced");
    }

    /** 15 kW at 27 degrees: 15 / (4.19 x 27) = 0.133 kg a second, 8 litres a minute, and every radiator drops over 20. */
    @Test
    void whenEveryRadiatorIsStarvedThereIsTooLittleFlowToShareOut() {
        Assessment a = assess(house("wheatear-house"));
        assertThat(found(a, "survey-pattern")).isEqualTo(new Answer.Several(List.of("all-starved")));
        assertThat(said(a, "survey-pattern")).isEqualTo("Pattern: all starved.");
        saying(a, "About 8.14 litres a minute go through the boiler: starved flow.");
        assertThat(chief(a)).isEqualTo("pump-setting-too-low");
    }

    /** What the readings say is weighed only where nobody has answered by hand. */
    @Test
    void theEngineersOwnAnswerStandsBeforeTheReadings() {
        Answer own = new Answer.One("none");
        Assessment a = assess(house("redpoll-drive").with("cold-base-count", own));
        assertThat(a.known().answer("cold-base-count")).contains(own);
        assertThat(a.disagreements()).anyMatch(w -> w.says().equals("3 of 8 bases are restricted."));
    }

    private static Job house(String name) {
        return CaseStudy.read(Path.of("cases/readings", name + ".json"), new JobCheck(Shared.CATALOGUE)).job();
    }

    private static Assessment assess(Job job) {
        return Shared.ASSESSOR.assess(job);
    }

    private static String chief(Assessment a) {
        return a.verdict().chief().orElseThrow().id();
    }

    private static Answer found(Assessment a, String finding) {
        return workedOut(a, finding).finding().orElseThrow().answer();
    }

    private static String said(Assessment a, String finding) {
        return workedOut(a, finding).says();
    }

    private static Calculation workedOut(Assessment a, String finding) {
        return a.workedOut().stream().filter(w -> w.finding().map(f -> f.id().equals(finding)).orElse(false)).findFirst()
                .orElseThrow(() -> new AssertionError(finding + " was not worked out; what was: " + a.workedOut()));
    }

    private static Calculation saying(Assessment a, String sentence) {
        return a.workedOut().stream().filter(w -> w.says().equals(sentence)).findFirst()
                .orElseThrow(() -> new AssertionError("nothing says \"" + sentence + "\"; what is said: " + a.workedOut()));
    }
}
