package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/** How much clean water it takes: mixed water thins out, pipe water is pushed out. */
class DilutionTest {

    @TestFactory
    List<DynamicTest> published() {
        return References.of("dilution")
                .check("DIL-01", (in, kilograms) -> assertThat(number(in, "m0")
                        * Dilution.mixedShareLeft(number(in, "Q") * number(in, "t"), number(in, "V")))
                        .isCloseTo(kilograms.asDouble(), within(0.005)))
                .check("DIL-T", (in, share) -> assertThat(Dilution.mixedShareLeft(number(in, "turnovers")))
                        .isCloseTo(share.asDouble(), within(1e-6)))
                .check("DIL-N", (in, turnovers) -> assertThat(
                        Dilution.turnoversToMains(number(in, "C0"), number(in, "Cm"), 0.10))
                        .isCloseTo(turnovers.asDouble(), within(1e-4)))
                .check("DIL-PLUG", (in, litres) -> {
                    // 30 m of 13.6 mm bore and 20 m of 20.2 mm bore, in decimetres.
                    double content = Math.PI / 4 * (300 * 0.136 * 0.136 + 200 * 0.202 * 0.202);
                    assertThat(Dilution.plugShareLeft(litres.asDouble() + 0.01, content)).isZero();
                    assertThat(Dilution.plugShareLeft(litres.asDouble() - 0.01, content)).isPositive();
                })
                // The first tank of two: clean water gives way to brine as dirt gives way to clean water.
                .check("DIL-SER", (in, kilograms) -> assertThat(
                        1000 * (1 - Dilution.mixedShareLeft(2 * number(in, "t"), 200)))
                        .isCloseTo(kilograms.asDouble(), within(0.01)))
                .tests();
    }

    private static double number(JsonNode in, String name) {
        return in.get(name).asDouble();
    }

    @Test
    void aRadiatorOfEightLitresIsDownToATwentiethAfterThreeOfItsVolumes() {
        double litres = Dilution.litresToShare(0.05, 8);
        assertThat(litres).isCloseTo(23.966, within(0.001));
        assertThat(Dilution.minutes(litres, 6)).isCloseTo(3.994, within(0.001));
    }

    @Test
    void halfAPipesContentPushesHalfOut() {
        assertThat(Dilution.plugShareLeft(5, 10)).isEqualTo(0.5);
        assertThat(Dilution.plugShareLeft(0, 10)).isEqualTo(1);
        assertThat(Dilution.plugShareLeft(25, 10)).isZero();
    }

    @Test
    void waterAsGoodAsTheMainsWantsNoMore() {
        assertThat(Dilution.turnoversToMains(330, 300, 0.1)).isZero();
        assertThat(Dilution.turnoversToMains(300, 300, 0.1)).isZero();
        // Softened fill below the mains is as far off as dirt above it: ln(200 / 30).
        assertThat(Dilution.turnoversToMains(100, 300, 0.1)).isCloseTo(1.8971, within(1e-4));
        assertThat(Dilution.turnoversToShare(1)).isEqualTo(0.0);
    }

    @Test
    void oneTurnoverAtATimeOrAllTogetherLeavesTheSame() {
        long seed = 20_260_107;
        Random random = new Random(seed);
        for (int i = 0; i < 1000; i++) {
            double a = random.nextDouble() * 8;
            double b = random.nextDouble() * 8;
            assertThat(Dilution.mixedShareLeft(a) * Dilution.mixedShareLeft(b)).as("seed %d, %f, %f", seed, a, b)
                    .isCloseTo(Dilution.mixedShareLeft(a + b), within(1e-12));
            assertThat(Dilution.turnoversToShare(Dilution.mixedShareLeft(a))).as("seed %d, %f", seed, a)
                    .isCloseTo(a, within(1e-9));
            double content = 1 + random.nextDouble() * 200;
            double litres = a * content;
            assertThat(Dilution.mixedShareLeft(litres, content)).as("seed %d, %f, %f", seed, litres, content)
                    .isGreaterThanOrEqualTo(Dilution.plugShareLeft(litres, content));
        }
    }

    @Test
    void limitsAreValidAndBeyondThemIsRefused() {
        assertThat(Dilution.mixedShareLeft(0)).isEqualTo(1);
        assertThat(Dilution.mixedShareLeft(100)).isPositive();
        assertThat(Dilution.turnoversToShare(1e-9)).isCloseTo(20.7233, within(1e-4));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.mixedShareLeft(-0.1))
                .withMessage("turnovers is -0.1; it must lie between 0.0 and 100.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.mixedShareLeft(100.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.mixedShareLeft(10, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.mixedShareLeft(-1, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.plugShareLeft(100_001, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.plugShareLeft(1, 100_001));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToShare(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToShare(1.01));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.litresToShare(0.1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToMains(-1, 300, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToMains(300, 0, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToMains(300, 300, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.minutes(10, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.minutes(Double.NaN, 6));
    }
}
