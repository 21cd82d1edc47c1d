package neutralpoint.hydronics.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.References;
import neutralpoint.hydronics.water.HeatCarried;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What a radiator gives to its room. */
public class HeatOutputTest {

    @TestFactory
    List<DynamicTest> published() {
        return References.of("heat")
                .check("RAD-F", (in, expected) -> assertThat(HeatOutput.factor(in.get("dT_K").asDouble(), 1.3))
                        .isCloseTo(expected.asDouble(), within(0.0006)))
                .check("RAD-REF", (in, expected) -> assertThat(HeatOutput.deltaTKelvin(in.get("flow").asDouble(),
                        in.get("return").asDouble(), in.get("room").asDouble())).isEqualTo(expected.asDouble()))
                .check("RAD-60", (in, expected) -> assertThat(HeatOutput.factor(60, HeatOutput.USUAL_EXPONENT))
                        .isCloseTo(expected.asDouble(), within(0.001)))
                .check("SIZE-EST", (in, expected) -> assertThat(HeatCarried.flowLitresPerMinute(in.get("W").asDouble(),
                        in.get("dT").asDouble(), 1.0, in.get("cp").asDouble()) / 60)
                        .isCloseTo(expected.asDouble(), within(0.0002)))
                .check("SIZE-32kW", (in, expected) -> assertThat(kilogramsPerSecond(in.get("kW").asDouble(),
                        in.get("dT").asDouble())).isCloseTo(expected.asDouble(), within(0.01)))
                .check("SIZE-1.6kW", (in, expected) -> assertThat(kilogramsPerSecond(in.get("kW").asDouble(),
                        in.get("dT").asDouble())).isCloseTo(expected.asDouble(), within(0.001)))
                .tests();
    }

    private static double kilogramsPerSecond(double kilowatts, double dropKelvin) {
        return HeatCarried.systemFlowLitresPerMinute(kilowatts, dropKelvin) * HeatCarried.KILOGRAMS_PER_LITRE / 60;
    }

    @Test
    void aRadiatorRunCoolGivesHalfItsRating() {
        // Type 22, 600 x 1000: 32 + 2763 x 0.6 = 1689.8 W at 50 K.
        // At 55/45 in a room at 20 the mean is 30 K over: (30/50)^1.3 = 0.51475, so 869.83 W.
        Estimate watts = HeatOutput.watts(RadiatorType.TYPE_22, 600, 1000, 55, 45, 20);
        assertThat(HeatOutput.watts(RadiatorType.TYPE_22, 600, 1000, 75, 65, 20).likely())
                .isCloseTo(1689.8, within(1e-6));
        assertThat(watts.likely()).isCloseTo(869.83, within(0.01));
        assertThat(watts.low()).isCloseTo(869.83 * 0.85, within(0.01));
        assertThat(watts.high()).isCloseTo(869.83 * 1.15, within(0.01));
    }

    @Test
    void theTwoMeansAgreeAtTheRatingAndPartWhenStarved() {
        // 10 / ln(55/45) = 49.833 K beside 50 K; starved, 50 / ln(55/5) = 20.852 K beside 30 K.
        assertThat(HeatOutput.logDeltaTKelvin(75, 65, 20)).isCloseTo(49.833, within(0.001));
        assertThat(HeatOutput.logDeltaTKelvin(75, 25, 20)).isCloseTo(20.852, within(0.001));
        assertThat(HeatOutput.deltaTKelvin(75, 25, 20)).isEqualTo(30);
        // (20.852/49.833)^1.3 = 0.32222: 544.5 W, where the arithmetic mean claims 869.8 W.
    }

    @Test
    void theLogarithmicMeanHasNoGapAtItsEnds() {
        assertThat(HeatOutput.logDeltaTKelvin(70, 70, 20)).isEqualTo(50);
        assertThat(HeatOutput.logDeltaTKelvin(70, 70 - 1e-9, 20)).isCloseTo(50, within(1e-8));
        assertThat(HeatOutput.logDeltaTKelvin(70, 20, 20)).isZero();
        assertThat(HeatOutput.logDeltaTKelvin(70, 20 + 1e-12, 20)).isBetween(0.0, 2.0);
        assertThat(HeatOutput.logDeltaTKelvin(20, 20, 20)).isZero();
    }

    @Test
    void theLogarithmicMeanLiesBetweenTheLeastAndTheArithmetic() {
        for (long seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            double room = -5 + random.nextDouble() * 45;
            double ret = room + random.nextDouble() * (110 - room);
            double flow = ret + random.nextDouble() * (110 - ret);
            assertThat(HeatOutput.logDeltaTKelvin(flow, ret, room)).as("seed %d", seed)
                    .isBetween(ret - room, HeatOutput.deltaTKelvin(flow, ret, room) + 1e-9);
        }
    }

    @Test
    void aRadiatorSettlesWhereItGivesWhatItIsBrought() {
        // 1000 W at 75/65/20: the flow that carries 1000 W over 10 K brings the return to 65 again.
        double flow = HeatCarried.flowLitresPerMinute(1000, 10);
        assertThat(HeatOutput.returnCelsius(1000, 1.3, 75, 20, flow)).isCloseTo(65, within(1e-6));
        // Hardly any flow: cooled right to the room. Very much: no drop to speak of.
        assertThat(HeatOutput.returnCelsius(1000, 1.3, 75, 20, 0.001)).isBetween(20.0, 20.1);
        assertThat(HeatOutput.returnCelsius(1000, 1.3, 75, 20, 100)).isBetween(74.8, 74.9);
    }

    @Test
    void theBalanceClosesAndMoreFlowMeansAWarmerReturn() {
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            double rated = 200 + random.nextDouble() * 3000;
            double exponent = 1 + random.nextDouble() * 0.6;
            double room = -5 + random.nextDouble() * 45;
            double hot = room + 1 + random.nextDouble() * (109 - room);
            double flow = 0.05 + random.nextDouble() * 10;
            double ret = HeatOutput.returnCelsius(rated, exponent, hot, room, flow);
            assertThat(ret).as("seed %d", seed).isBetween(room, hot);
            double given = rated * Math.pow(HeatOutput.logDeltaTKelvin(hot, ret, room)
                    / (10 / Math.log(55.0 / 45)), exponent);
            assertThat(HeatCarried.watts(flow, hot - ret)).as("seed %d", seed).isCloseTo(given, within(0.01));
            assertThat(HeatOutput.returnCelsius(rated, exponent, hot, room, flow * 1.1)).as("seed %d", seed)
                    .isGreaterThan(ret);
        }
    }

    @Test
    void aHotterFlowGivesMore() {
        double before = -1;
        for (double flow = 20; flow <= 110; flow += 0.5) {
            double watts = HeatOutput.watts(RadiatorType.TYPE_21, 450, 900, flow, 20, 20).likely();
            assertThat(watts).as("flow %s", flow).isGreaterThan(before);
            before = watts;
        }
    }

    @Test
    void whatWaterAndRoomsCannotBeIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.factor(-0.1, 1.3))
                .withMessage("The difference to the room in kelvin is -0.1; it must lie between 0.0 and 110.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.factor(110.1, 1.3));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.factor(50, 0.99))
                .withMessageContaining("exponent");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.factor(50, 1.61));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.deltaTKelvin(60, 61, 20))
                .withMessageContaining("61.0");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.deltaTKelvin(60, 19, 20))
                .withMessageContaining("20.0 and 60.0");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.logDeltaTKelvin(19, 19, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.logDeltaTKelvin(111, 60, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.deltaTKelvin(60, 50, 41))
                .withMessageContaining("room");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.deltaTKelvin(60, 50, Double.NaN));
        assertThat(HeatOutput.factor(0, 1)).isZero();
        assertThat(HeatOutput.factor(110, 1.6)).isCloseTo(Math.pow(2.2, 1.6), within(1e-12));
    }

    @Test
    void aBalanceThatCannotBeStruckIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.returnCelsius(9, 1.3, 75, 20, 1))
                .withMessageContaining("10.0 and 20000.0");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.returnCelsius(20_001, 1.3, 75, 20, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.returnCelsius(1000, 1.7, 75, 20, 1))
                .withMessageContaining("exponent");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.returnCelsius(1000, 1.3, 20.9, 20, 1))
                .withMessageContaining("21.0 and 110.0");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.returnCelsius(1000, 1.3, 75, 41, 1))
                .withMessageContaining("room");
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.returnCelsius(1000, 1.3, 75, 20, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> HeatOutput.returnCelsius(1000, 1.3, 75, 20, 100.1))
                .withMessageContaining("litres per minute");
    }

    @Test
    void theOutermostBalancesAreStruck() {
        for (double rated : new double[] {10, 20_000}) {
            for (double exponent : new double[] {1, 1.6}) {
                for (double room : new double[] {-5, 40}) {
                    for (double hot : new double[] {room + 1, 110}) {
                        for (double flow : new double[] {0.001, 100}) {
                            assertThat(HeatOutput.returnCelsius(rated, exponent, hot, room, flow)).isBetween(room, hot);
                        }
                    }
                }
            }
        }
    }
}
