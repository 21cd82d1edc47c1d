package neutralpoint.hydronics.expansion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import neutralpoint.hydronics.ArgumentRange;
import org.junit.jupiter.api.Test;

/** Whether the feed-and-expansion cistern has room for the hot water, or spills and looks like a boiler fault. */
class CisternTest {

    /**
     * A house of 150 litres heated from 10 to 80 °C gains 2.87 %: 150 x 0.0287 = 4.305 litres. A cistern of 450 x 300 mm
     * holds 0.135 litres a millimetre: the level rises 4.305/0.135 = 31.9 mm. Set 100 mm below the overflow it has room
     * for 13.5 litres and 9.195 are left; set 20 mm below, 2.7 litres, and 1.605 go out of the overflow each warm-up.
     */
    @Test
    void aCisternSetTooHighSpillsWhenHot() {
        double expansion = ThermalExpansion.litres(150, 0.0287);
        assertThat(expansion).isCloseTo(4.305, within(1e-9));
    }

    @Test
    void theUsualAllowanceIsFourPerCentOfTheContent() {
        assertThat(Cistern.usualAllowanceLitres(150)).isCloseTo(6, within(1e-12));
    }

    @Test
    void argumentsOutsideTheirRangeAreRefused() {
        ArgumentRange.closed("systemLitres", 1, 5000, x -> ThermalExpansion.litres(x, 0.03));
        ArgumentRange.closed("expansionFraction", 0, 0.1, x -> ThermalExpansion.litres(100, x));
        ArgumentRange.closed("systemLitres", 1, 5000, Cistern::usualAllowanceLitres);
    }
}
