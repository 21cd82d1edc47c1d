package neutralpoint.hydronics.expansion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
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
        assertThat(Cistern.riseMillimetres(450, 300, expansion)).isCloseTo(31.889, within(0.001));
        assertThat(Cistern.roomLitres(450, 300, 100)).isCloseTo(13.5, within(1e-9));
        assertThat(Cistern.marginLitres(13.5, expansion)).isCloseTo(9.195, within(1e-9));
        assertThat(Cistern.marginLitres(Cistern.roomLitres(450, 300, 20), expansion)).isCloseTo(-1.605, within(1e-9));
    }

    /** Drawing 2 litres from a drain cock must lower that cistern by 2/0.135 = 14.8 mm; if not, the feed is plugged. */
    @Test
    void waterDrawnOffLowersTheLevel() {
        assertThat(Cistern.riseMillimetres(450, 300, -2)).isCloseTo(-14.815, within(0.001));
    }

    @Test
    void theUsualAllowanceIsFourPerCentOfTheContent() {
        assertThat(Cistern.usualAllowanceLitres(150)).isCloseTo(6, within(1e-12));
    }

    @Test
    void theRoomIsJustTheVolumeThatRaisesTheLevelToTheOverflow() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            double length = 200 + 800 * random.nextDouble();
            double width = 200 + 800 * random.nextDouble();
            double below = 400 * random.nextDouble();
            assertThat(Cistern.riseMillimetres(length, width, Cistern.roomLitres(length, width, below))).as("seed %d", seed)
                    .isCloseTo(below, within(1e-9));
        }
    }

    @Test
    void argumentsOutsideTheirRangeAreRefused() {
        ArgumentRange.closed("systemLitres", 1, 5000, x -> ThermalExpansion.litres(x, 0.03));
        ArgumentRange.closed("expansionFraction", 0, 0.1, x -> ThermalExpansion.litres(100, x));
        ArgumentRange.closed("systemLitres", 1, 5000, Cistern::usualAllowanceLitres);
        ArgumentRange.closed("lengthMillimetres", 1, 5000, x -> Cistern.roomLitres(x, 300, 100));
        ArgumentRange.closed("widthMillimetres", 1, 5000, x -> Cistern.roomLitres(450, x, 100));
        ArgumentRange.closed("levelBelowOverflowMillimetres", 0, 2000, x -> Cistern.roomLitres(450, 300, x));
        ArgumentRange.closed("roomLitres", 0, 50_000, x -> Cistern.marginLitres(x, 4));
        ArgumentRange.closed("expansionLitres", 0, 500, x -> Cistern.marginLitres(10, x));
        ArgumentRange.closed("litres", -500, 500, x -> Cistern.riseMillimetres(450, 300, x));
        ArgumentRange.closed("lengthMillimetres", 1, 5000, x -> Cistern.riseMillimetres(x, 300, 1));
        ArgumentRange.closed("widthMillimetres", 1, 5000, x -> Cistern.riseMillimetres(450, x, 1));
    }
}
