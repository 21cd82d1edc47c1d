package neutralpoint.workings;

import static neutralpoint.JobBuilder.aJob;
import static neutralpoint.JobBuilder.more;
import static neutralpoint.workings.Calculation.Grade.FAIL;
import static neutralpoint.workings.Calculation.Grade.PASS;
import static neutralpoint.workings.Calculation.Grade.WARN;
import static org.assertj.core.api.Assertions.assertThat;

import neutralpoint.job.Job;
import org.junit.jupiter.api.Test;

/** What the pump does at an open vent, and whether the tank stands high enough and has room. */
class VentWorkingsTest {
    private static final String VENT = "vent-worked-out";
    private static final String ROOM = "tank-room-worked-out";

    private static String vent(double headMetres, double percent, double ventMillimetres) {
        return WorkedOut.choice(aJob().readings("pump-head-m", headMetres, "tee-resistance-percent", percent, "vent-rise-mm", ventMillimetres).job(), VENT);
    }

    private static String drawn(double headMetres, double percent, double teeBelowWaterMetres) {
        return WorkedOut.choice(aJob().readings("pump-head-m", headMetres, "tee-resistance-percent", percent,
                "vent-tee-below-water-m", teeBelowWaterMetres).job(), VENT);
    }

    @Test
    void theLiftIsPumpHeadTimesTheShareOfResistanceBetweenTheTees() {
        // 5 m x 0.10 = 0.5 m; a vent of 0.45 m is 0.05 m too short.
        assertThat(vent(5, 10, 450)).isEqualTo("pumps-over");
        // 4 m x 0.10 = 0.4 m leaves 0.05 m, less than water rocks as the pump starts.
        assertThat(vent(4, 10, 450)).isEqualTo("near-pumping-over");
        // 3 m x 0.02 = 0.06 m leaves 0.39 m.
        assertThat(vent(3, 2, 450)).isEqualTo("stays-put");
        assertThat(vent(6, 0, 150)).as("tees side by side see nothing of the pump").isEqualTo("stays-put");
    }

    @Test
    void waterThatJustReachesTheBendGoesOver() {
        // 5 m x 0.10 = 0.5 m to the top of a vent of 0.5 m.
        assertThat(vent(5, 10, 500)).isEqualTo("pumps-over");
        assertThat(vent(5, 10, 501)).isEqualTo("near-pumping-over");
        assertThat(vent(5, 10, 649)).isEqualTo("near-pumping-over");
        assertThat(vent(5, 10, 650)).isEqualTo("stays-put");
    }

    @Test
    void aPumpThatLiftsNothingPumpsNothingOver() {
        assertThat(vent(6, 0, 0)).as("a vent that ends at the water").isEqualTo("near-pumping-over");
    }

    @Test
    void aNegativeShareDrawsTheVentDown() {
        // 5 m x -0.30 = -1.5 m.
        assertThat(drawn(5, -30, 1.2)).isEqualTo("draws-air");
        assertThat(drawn(5, -30, 1.5)).as("empty down to its tee").isEqualTo("draws-air");
        assertThat(drawn(5, -30, 1.6)).isEqualTo("stays-put");
        assertThat(drawn(5, -30, 0)).isEqualTo("draws-air");
    }

    @Test
    void littleWaterLeftInTheVentIsAWarning() {
        // 1.6 m - 1.5 m = 0.1 m left, less than the 0.15 m by which water rocks; 1.7 m leaves 0.2 m.
        String[] figures = {"pump-head-m", "tee-resistance-percent", "vent-tee-below-water-m"};
        assertThat(WorkedOut.of(aJob().readings(figures[0], 5, figures[1], -30, figures[2], 1.6).job(), VENT).orElseThrow().grade()).isEqualTo(WARN);
        assertThat(WorkedOut.of(aJob().readings(figures[0], 5, figures[1], -30, figures[2], 1.7).job(), VENT).orElseThrow().grade()).isEqualTo(PASS);
    }

    @Test
    void eachSideNeedsItsOwnHeight() {
        assertThat(WorkedOut.workings(aJob().readings("pump-head-m", 5, "tee-resistance-percent", 10, "vent-tee-below-water-m", 1.2).job())).isEmpty();
        assertThat(WorkedOut.workings(aJob().readings("pump-head-m", 5, "tee-resistance-percent", -10, "vent-rise-mm", 450).job())).isEmpty();
        assertThat(WorkedOut.workings(aJob().readings("pump-head-m", 5).job())).isEmpty();
    }

    @Test
    void theSumIsShown() {
        assertThat(WorkedOut.of(aJob().readings("pump-head-m", 5, "tee-resistance-percent", 10, "vent-rise-mm", 450).job(), VENT).orElseThrow().sums())
                .containsExactly("pump head 5 m x share between the tees 0.1 = 0.5 m at the vent", "vent above water 0.45 m - 0.5 m = -0.05 m left");
    }

    @Test
    void theVentStandsAsHighAsHotWaterAndPumpAskFor() {
        // 0.04 x 5 m = 0.2 m for the hot column, 0.15 m, and 5 m x 0.05 = 0.25 m lift: 0.6 m.
        assertThat(height(450).grade()).isEqualTo(FAIL);
        assertThat(height(450).says()).isEqualTo("The vent stands 0.45 m above the water; the rule asks for 0.6 m.");
        assertThat(height(600).grade()).as("just high enough").isEqualTo(PASS);
        assertThat(height(594).grade()).isEqualTo(FAIL);
        // A pump that draws the vent down takes nothing off: it is often at rest. 0.2 m + 0.15 m.
        assertThat(WorkedOut.saying(aJob().readings("tank-above-boiler-m", 5, "vent-rise-mm", 350, "pump-head-m", 5, "tee-resistance-percent", -20).job(),
                "The vent stands").grade()).isEqualTo(PASS);
    }

    private static Calculation height(double ventMillimetres) {
        return WorkedOut.saying(aJob().readings("tank-above-boiler-m", 5, "vent-rise-mm", ventMillimetres, "pump-head-m", 5,
                "tee-resistance-percent", 5).job(), "The vent stands");
    }

    @Test
    void theTankStandsAMetreOverTheHighestPumpedPart() {
        assertThat(head(1.0).grade()).isEqualTo(PASS);
        assertThat(head(0.99).grade()).isEqualTo(WARN);
        assertThat(head(0.5).grade()).isEqualTo(WARN);
        assertThat(head(0.49).grade()).isEqualTo(FAIL);
        // 2 m of water at 10 degrees weigh 2 x 999.7 x 9.807 Pa = 0.196 bar.
        assertThat(head(2).sums()).containsExactly("static pressure there: 2 m = 0.2 bar");
        assertThat(head(0).sums()).containsExactly("static pressure there: 0 m = 0 bar");
    }

    @Test
    void aPartAboveTheTankStandsUnderTheAtmosphere() {
        assertThat(head(-2).grade()).isEqualTo(FAIL);
        assertThat(head(-2).says()).startsWith("The tank's water stands 2 m below the highest pumped part;");
        assertThat(head(-2).sums()).containsExactly("static pressure there: -2 m = -0.2 bar");
    }

    private static Calculation head(double metres) {
        return WorkedOut.saying(aJob().readings("tank-above-highest-part-m", metres).job(), "The tank's water");
    }

    @Test
    void waterUnderATankBoilsALittleOverAHundred() {
        // 5 m at 80 degrees: 5 x 971.8 x 9.807 Pa = 0.477 bar; 1.013 + 0.477 = 1.49 bar, and steam tables have 109.3 at 1.4 bar, 111.4 at 1.5.
        assertThat(boiling(5, 80).says()).startsWith("Water boils at 111.").endsWith("the flow stands 31.14 degrees under that.");
        assertThat(boiling(5, 80).grade()).isEqualTo(PASS);
        // At the tank's own level water boils at 99.97 degrees: 90 is 10 under it, 84.9 is 15.07.
        assertThat(boiling(0, 90).grade()).isEqualTo(WARN);
        assertThat(boiling(0, 84.9).grade()).isEqualTo(PASS);
    }

    @Test
    void aFlowOverTheBoilingPointBoils() {
        assertThat(boiling(0, 100).grade()).isEqualTo(FAIL);
        assertThat(boiling(20, 120).grade()).as("20 m hold it down: 133 degrees").isEqualTo(WARN);
        assertThat(boiling(2, 120).says()).as("1.2 bar, 105 degrees").startsWith("Water boils at 104.").endsWith("and the flow reads 120.");
    }

    private static Calculation boiling(double tankAboveBoilerMetres, double flowCelsius) {
        return WorkedOut.saying(aJob().readings("tank-above-boiler-m", tankAboveBoilerMetres, "boiler-flow-celsius", flowCelsius).job(), "Water boils");
    }

    /** 100 litres from 10 degrees: 2.25 litres at a mean of 70, 2.88 at a flow of 80 (densities 999.7, 977.8 and 971.8 kg/m3). */
    @Test
    void theTankTakesWhatTheWaterGains() {
        assertThat(room(2.2)).isEqualTo("too-little");
        assertThat(room(2.9)).isEqualTo("enough");
        assertThat(room(2.5)).as("between them nothing can be said").isEmpty();
        assertThat(WorkedOut.saying(tank(2.5), "The tank has room").grade()).isEqualTo(WARN);
        assertThat(room(0)).isEqualTo("too-little");
    }

    @Test
    void aBoilerReadCoolSaysNothingOfTheRoomNeeded() {
        // As usual then: 75 degrees flow, where 100 litres gain 2.55.
        assertThat(WorkedOut.choice(more(tank(0)).readings("boiler-flow-celsius", 8).job(), ROOM)).isEqualTo("too-little");
        assertThat(WorkedOut.choice(more(tank(2.6)).readings("boiler-flow-celsius", 8).job(), ROOM)).isEqualTo("enough");
    }

    @Test
    void withoutContentTheTankIsNotJudged() {
        assertThat(WorkedOut.workings(aJob().readings("feed-tank-room-litres", 5, "boiler-flow-celsius", 80).job())).isEmpty();
    }

    private static String room(double litres) {
        return WorkedOut.choice(tank(litres), ROOM);
    }

    private static Job tank(double roomLitres) {
        return aJob().readings("feed-tank-room-litres", roomLitres, "system-content-litres", 100, "boiler-flow-celsius", 80,
                "boiler-flow-return-kelvin", 20).job();
    }
}
