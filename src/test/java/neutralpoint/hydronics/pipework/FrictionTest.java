package neutralpoint.hydronics.pipework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import neutralpoint.hydronics.ArgumentRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class FrictionTest {
    /** Slow flow: 64 / 1000 = 0.064, whatever the wall is like. */
    @Test
    void laminarFlowDoesNotFeelTheWall() {
        assertThat(Friction.darcyFactor(1000, 0)).isEqualTo(0.064);
        assertThat(Friction.darcyFactor(1000, 0.05)).isEqualTo(0.064);
        assertThat(Friction.darcyFactor(1, 0)).isEqualTo(64);
    }

    /** At high speed only the wall counts: f = (2 log10(3.7 / 0.05))^−2 = (2 · 1.86923)^−2 = 0.07155. */
    @Test
    void veryFastFlowInARoughPipeDoesNotFeelTheViscosity() {
        assertThat(Friction.darcyFactor(1e8, 0.05)).isCloseTo(0.07155, within(1e-5));
        assertThat(Friction.darcyFactor(1e7, 0.05)).isCloseTo(Friction.darcyFactor(1e8, 0.05), Percentage.withPercentage(0.01));
    }

    /** What Prandtl's law 1/√f = 2 log10(Re √f) − 0.8 gives for a smooth pipe: 0.0180 at Re 100 000 (from memory). */
    @Test
    void aSmoothPipeAgreesWithPrandtl() {
        double f = Friction.darcyFactor(1e5, 0);
        assertThat(f).isCloseTo(0.0180, within(0.0001));
        assertThat(1 / Math.sqrt(f)).isCloseTo(2 * Math.log10(1e5 * Math.sqrt(f)) - 0.8, within(0.01));
    }

    /** Half way across the bridge the factor is the mean of its ends, here 64/2000 = 0.0320 and Colebrook's 0.0399. */
    @Test
    void theBridgeIsAStraightLine() {
        assertThat(Friction.darcyFactor(2000, 0)).isCloseTo(0.032, within(1e-12));
        assertThat(Friction.darcyFactor(3000, 0)).isCloseTo(0.03596, within(0.00001));
        assertThat(Friction.darcyFactor(2500, 0.01))
                .isCloseTo(0.75 * 0.032 + 0.25 * Friction.darcyFactor(4000, 0.01), within(1e-12));
    }

    @Test
    void theFactorHasNoStepAtEitherEndOfTheBridge() {
        for (double roughness : new double[] {0, 0.0001, 0.01, 0.05}) {
            for (double end : new double[] {2000, 4000}) {
                assertThat(Friction.darcyFactor(end - 1e-6, roughness))
                        .isCloseTo(Friction.darcyFactor(end + 1e-6, roughness), within(1e-9));
            }
        }
    }

    /** Haaland (1983) gave an explicit formula within 2 % of Colebrook from Re 4000 up (from memory). */
    @Test
    void turbulentFlowStaysNearHaaland() {
        long seed = 20260101;
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            double reynolds = Math.pow(10, 3.61 + 4.39 * random.nextDouble());
            double roughness = 0.05 * random.nextDouble();
            double haaland = Math.pow(-1.8 * Math.log10(Math.pow(roughness / 3.7, 1.11) + 6.9 / reynolds), -2);
            assertThat(Friction.darcyFactor(reynolds, roughness)).as("seed %d, Re %s, roughness %s", seed, reynolds, roughness)
                    .isCloseTo(haaland, Percentage.withPercentage(2));
        }
    }

    @Test
    void argumentsOutOfRangeAreRefused() {
        ArgumentRange.limits("reynolds", 1, 1e8, re -> Friction.darcyFactor(re, 0.001));
        ArgumentRange.limits("relativeRoughness", 0, 0.05, roughness -> Friction.darcyFactor(5000, roughness));
        ArgumentRange.limits("relativeRoughness", 0, 0.05, roughness -> Friction.darcyFactor(100, roughness));
    }
}
