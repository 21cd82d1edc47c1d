package neutralpoint.hydronics.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import neutralpoint.hydronics.Estimate;
import neutralpoint.hydronics.emitter.SystemContent.ContentPart;
import neutralpoint.hydronics.pipework.Tube;
import neutralpoint.hydronics.pipework.Tube.Material;
import org.junit.jupiter.api.Test;

/** A whole system counted part by part, and held against rules of thumb. */
class SystemContentTest {
    private static final SystemContent NOTHING_YET = new SystemContent(List.of());

    @Test
    void aSmallHouseByHand() {
        // Six type 11 radiators, 600 x 1000: 6 x 3.25 = 19.5 L; boiler 2.5; coil 4; 60 m of 15 mm: 8.716 L.
        // Likely 34.716 L; least 19.5 x 0.85 + 1 + 2 + 8.716 = 28.291; most 19.5 x 1.15 + 4 + 6 + 8.716 = 41.141.
        SystemContent house = NOTHING_YET
                .with("six radiators", WaterContent.radiatorLitres(RadiatorType.TYPE_11, 600, 1000).times(6))
                .with("boiler", BoilerKind.WALL_HUNG_LOW_CONTENT.litres())
                .with("coil", WaterContent.CYLINDER_COIL_LITRES)
                .with("pipes", WaterContent.pipeLitres(Tube.usual(Material.COPPER, 15), 60));
        assertThat(house.totalLitres().likely()).isCloseTo(34.716, within(0.001));
        assertThat(house.totalLitres().low()).isCloseTo(28.291, within(0.001));
        assertThat(house.totalLitres().high()).isCloseTo(41.141, within(0.001));
        assertThat(house.parts()).extracting(ContentPart::name).containsExactly("six radiators", "boiler", "coil", "pipes");
        // 7 L to each of six panels is 42, less a quarter 31.5: the two agree.
    }

    @Test
    void aSystemOfWhichNothingIsKnownAddsUpToNothing() {
        assertThat(NOTHING_YET.totalLitres()).isEqualTo(Estimate.NOTHING);
    }

    @Test
    void theSameWaterIsNotCountedTwice() {
        SystemContent boiler = NOTHING_YET.with("boiler", Estimate.exactly(3));
        assertThatIllegalArgumentException().isThrownBy(() -> boiler.with("boiler", Estimate.exactly(3)))
                .withMessage("Each part must be counted once, and boiler is there twice.");
    }

    @Test
    void partsNeedANameAndCannotHoldLessThanNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ContentPart(" ", Estimate.NOTHING))
                .withMessageContaining("name");
        assertThatIllegalArgumentException().isThrownBy(() -> new ContentPart("coil", new Estimate(-1, 0, 1)))
                .withMessageStartingWith("The litres in coil is ").withMessageContaining("must lie between 0.0");
    }

    @Test
    void laterChangesToTheListDoNotReachIt() {
        List<ContentPart> parts = new ArrayList<>(List.of(new ContentPart("boiler", Estimate.exactly(3))));
        SystemContent content = new SystemContent(parts);
        parts.clear();
        assertThat(content.totalLitres()).isEqualTo(Estimate.exactly(3));
    }

    @Test
    void rulesOfThumbByHand() {
        // 10 kW: 6 x 10 to 11 x 10. 16 panels: 112, a quarter either way. 10 radiators: 110, a quarter either way.
        assertThat(ContentRule.byKilowatts(10).litres()).isEqualTo(new Estimate(60, 85, 110));
        assertThat(new ContentRule("7 litres for each of 16 panels", new Estimate(84, 112, 140)).litres()).isEqualTo(new Estimate(84, 112, 140));
        assertThat(ContentRule.byRadiators(10).litres()).isEqualTo(new Estimate(82.5, 110, 137.5));
    }

    @Test
    void aCountAndARuleThatCannotBothBeRightAreSaidToDisagree() {
        ContentRule rule = new ContentRule("7 litres for each of 16 panels", new Estimate(84, 112, 140));
        ContentCheck tooLittle = NOTHING_YET.with("radiators", new Estimate(40, 50, 83)).against(rule);
        assertThat(tooLittle.agrees()).isFalse();
        assertThat(tooLittle.inWords()).isEqualTo("They disagree: the parts add up to 40 to 83 litres, and 7 litres"
                + " for each of 16 panels makes 84 to 140; look for a part left out or counted twice.");
        ContentCheck enough = NOTHING_YET.with("radiators", new Estimate(40, 50, 84)).against(rule);
        assertThat(enough.agrees()).isTrue();
        assertThat(enough.inWords()).isEqualTo(
                "They agree: the parts add up to 40 to 84 litres, and 7 litres for each of 16 panels makes 84 to 140.");
        assertThat(ContentRule.byKilowatts(10).inWords()).isEqualTo("6 to 11 litres for each of 10.0 kW");
        assertThat(ContentRule.byRadiators(10).inWords())
                .isEqualTo("10 litres for each of 10 radiators and 10 for the boiler");
    }

    @Test
    void countsThatNoHouseHasAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> ContentRule.byKilowatts(0.9))
                .withMessageContaining("1.0 and 100.0");
        assertThatIllegalArgumentException().isThrownBy(() -> ContentRule.byRadiators(0))
                .withMessageContaining("radiators");
        assertThatIllegalArgumentException().isThrownBy(() -> ContentRule.byRadiators(201));
        assertThatNoException().isThrownBy(() -> ContentRule.byRadiators(1));
    }
}
