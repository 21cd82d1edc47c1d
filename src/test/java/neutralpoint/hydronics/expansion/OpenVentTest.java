package neutralpoint.hydronics.expansion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import neutralpoint.hydronics.ArgumentRange;
import neutralpoint.hydronics.References;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Pumping over, air drawn in at the vent, and where the cistern must stand. */
class OpenVentTest {

    @TestFactory
    List<DynamicTest> published() {
        return References.of("open-vent")
                .check("VENT-H", (in, expected) -> assertThat(
                        OpenVent.requiredVentHeightMetres(in.get("H_m").asDouble()))
                        .isCloseTo(expected.asDouble(), within(1e-12)))
                .check("OV-03", (in, expected) -> assertThat(OpenVent.SMALLEST_CISTERN_HEIGHT_FULLY_PUMPED_METRES)
                        .isEqualTo(expected.asDouble()))
                .check("OV-05", (in, expected) -> assertThat(Cistern.usualAllowanceLitres(100)).isEqualTo(expected.asDouble()))
                .tests();
    }

    /**
     * Boiler, vent, cold feed, pump: the pump's water comes back to the boiler, passes the vent and then the feed. Of its
     * 3 m it still has to spend between the two tees 15 %, and 3 m x 0.15 = 0.45 m: so far the vent rises. With the top
     * of its bend 0.60 m over the water 0.60 - 0.45 = 0.15 m remain.
     */
    @Test
    void theVentRisesByTheHeadSpentBetweenItAndTheFeed() {
        double rise = OpenVent.riseAtVentMetres(3, 0.15);
        assertThat(rise).isCloseTo(0.45, within(1e-12));
        assertThat(OpenVent.marginBeforePumpingOverMetres(0.60, rise)).isCloseTo(0.15, within(1e-12));
    }

    /** Sludge in the flow between the tees takes 40 % of 3 m: 1.2 m, twice what a vent 0.6 m high holds back. */
    @Test
    void sludgeBetweenTheTeesPumpsOver() {
        assertThat(OpenVent.marginBeforePumpingOverMetres(0.60, OpenVent.riseAtVentMetres(3, 0.40)))
                .isCloseTo(-0.60, within(1e-12));
    }

    /**
     * Feed before the boiler, vent after it, then the pump: the pump draws the vent down. With 5 m over a boiler that
     * takes 30 % the fall is 1.5 m; a vent tee only 1.2 m under the cistern's water is emptied, one 2 m under is not.
     */
    @Test
    void aPumpThatDrawsOnTheVentTakesAirWhereTheTeeIsHigh() {
        double fall = OpenVent.riseAtVentMetres(5, -0.30);
        assertThat(fall).isCloseTo(-1.5, within(1e-12));
        assertThat(OpenVent.marginBeforeDrawingAirMetres(1.2, fall)).isCloseTo(-0.3, within(1e-12));
        assertThat(OpenVent.marginBeforeDrawingAirMetres(2.0, fall)).isCloseTo(0.5, within(1e-12));
        assertThat(OpenVent.marginBeforePumpingOverMetres(0.3, fall)).as("it cannot pump over")
                .isCloseTo(1.8, within(1e-12));
    }

    /** The pump is often at rest, so a vent that the pump draws down needs its full height none the less. */
    @Test
    void thePumpsRiseIsAddedToTheVentAndItsFallIsNotTakenOff() {
        assertThat(OpenVent.requiredVentHeightMetres(5, 0.2)).isCloseTo(0.55, within(1e-12));
        assertThat(OpenVent.requiredVentHeightMetres(5, -0.2)).isCloseTo(0.35, within(1e-12));
    }

    /** Under 2.5 m of head, about 1.25 bar absolute, water boils near 106 °C; at 94 °C it is 12 K from it. */
    @Test
    void boilingMarginIsWhatIsLeft() {
        assertThat(OpenVent.boilingMarginKelvin(106, 94)).isEqualTo(12);
        assertThat(OpenVent.boilingMarginKelvin(102, 104.5)).as("kettling").isEqualTo(-2.5);
    }

    /** Moving a tee, or turning up the pump, can only be judged if the sums never go the wrong way. */
    @Test
    void moreHeadOrMoreResistanceBetweenTheTeesNeverLowersTheRise() {
        for (long seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            double head = 19 * random.nextDouble();
            double more = head + random.nextDouble();
            double share = random.nextDouble();
            double larger = share + (1 - share) * random.nextDouble();
            double rise = OpenVent.riseAtVentMetres(head, share);
            assertThat(OpenVent.riseAtVentMetres(more, share)).as("seed %d", seed).isGreaterThanOrEqualTo(rise);
            assertThat(OpenVent.riseAtVentMetres(head, larger)).as("seed %d", seed).isGreaterThanOrEqualTo(rise);
            assertThat(OpenVent.riseAtVentMetres(head, -share)).as("seed %d", seed).isEqualTo(-rise);
        }
    }

    @Test
    void argumentsOutsideTheirRangeAreRefused() {
        ArgumentRange.closed("pumpHeadMetres", 0, 20, x -> OpenVent.riseAtVentMetres(x, 1));
        ArgumentRange.closed("shareOfResistanceBetweenTees", -1, 1, x -> OpenVent.riseAtVentMetres(5, x));
        ArgumentRange.closed("ventHeightAboveWaterMetres", 0, 50, x -> OpenVent.marginBeforePumpingOverMetres(x, 0));
        ArgumentRange.closed("riseMetres", -20, 20, x -> OpenVent.marginBeforePumpingOverMetres(1, x));
        ArgumentRange.closed("waterAboveVentTeeMetres", 0, 50, x -> OpenVent.marginBeforeDrawingAirMetres(x, 0));
        ArgumentRange.closed("riseMetres", -20, 20, x -> OpenVent.marginBeforeDrawingAirMetres(1, x));
        ArgumentRange.closed("heightOfWaterAboveBoilerMetres", 0, 50, OpenVent::requiredVentHeightMetres);
        ArgumentRange.closed("riseMetres", -20, 20, x -> OpenVent.requiredVentHeightMetres(5, x));
        ArgumentRange.closed("boilingPointCelsius", 0, 200, x -> OpenVent.boilingMarginKelvin(x, 80));
        ArgumentRange.closed("exchangerCelsius", 0, 200, x -> OpenVent.boilingMarginKelvin(100, x));
    }
}
