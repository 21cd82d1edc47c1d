package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/** How much clean water it takes: mixed water thins out, pipe water is pushed out. */
class DilutionTest {

    @TestFactory
    List<DynamicTest> published() {
        return References.of("dilution")
                .check("DIL-N", (in, turnovers) -> assertThat(
                        Dilution.turnoversToMains(number(in, "C0"), number(in, "Cm"), 0.10))
                        .isCloseTo(turnovers.asDouble(), within(1e-4)))
                .tests();
    }

    private static double number(JsonNode in, String name) {
        return in.get(name).asDouble();
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
    void limitsAreValidAndBeyondThemIsRefused() {
        assertThat(Dilution.turnoversToShare(1e-9)).isCloseTo(20.7233, within(1e-4));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToShare(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToShare(1.01));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToMains(-1, 300, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToMains(300, 0, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> Dilution.turnoversToMains(300, 300, 0));
    }
}
