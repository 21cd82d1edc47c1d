package neutralpoint.hydronics.pipework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import neutralpoint.hydronics.ArgumentRange;
import neutralpoint.hydronics.pipework.PumpCurve.Point;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class PumpCurveTest {
    private static final PumpCurve STRAIGHT = curve(0, 6, 60, 0);
    private static final PumpCurve BENT = curve(0, 6, 10, 5, 20, 3);

    private static PumpCurve curve(double... flowsAndHeads) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < flowsAndHeads.length; i += 2) {
            points.add(new Point(flowsAndHeads[i], flowsAndHeads[i + 1]));
        }
        return new PumpCurve(points);
    }

    /** Two points make a straight line: half way to 60 L/min, half of 6 m. */
    @Test
    void twoPointsMakeAStraightLine() {
        assertThat(STRAIGHT.headMetres(30)).isCloseTo(3, within(1e-12));
        assertThat(STRAIGHT.headMetres(0)).isEqualTo(6);
        assertThat(STRAIGHT.headMetres(60)).isZero();
        ArgumentRange.limits("flowLitresPerMinute", 0, 60, STRAIGHT::headMetres);
    }

    /**
     * Slopes −0.1 and −0.2 m per L/min meet at 10 L/min; their harmonic mean is 2 / (1/−0.1 + 1/−0.2) = −0.13333. Half
     * way along the first piece a cubic has (6 + 5)/2 + 10/8 · (−0.1 + 0.13333) = 5.54167 m; along the second, which
     * ends with its chord, (5 + 3)/2 + 10/8 · (−0.13333 + 0.2) = 4.08333 m.
     */
    @Test
    void threePointsMakeASmoothBend() {
        assertThat(BENT.headMetres(5)).isCloseTo(5.54167, within(0.00001));
        assertThat(BENT.headMetres(15)).isCloseTo(4.08333, within(0.00001));
        assertThat(BENT.headMetres(10)).isCloseTo(5, within(1e-12));
    }

    /**
     * Pieces 6 and 12 L/min wide, chords −0.1 and −0.2: weights 2·12 + 6 = 30 and 12 + 2·6 = 24, slope at the joint
     * 54 / (30/−0.1 + 24/−0.2) = −0.128571; half way along the first piece (6 + 5.4)/2 + 6/8 · (−0.1 + 0.128571) = 5.72143 m.
     */
    @Test
    void unevenlySpacedPointsAreWeighted() {
        PumpCurve uneven = curve(0, 6, 6, 5.4, 18, 3);
        assertThat(uneven.headMetres(3)).isCloseTo(5.72143, within(0.00001));
    }

    @Test
    void aFlatStretchStaysFlat() {
        PumpCurve flat = curve(0, 5, 10, 5, 20, 4, 30, 0);
        assertThat(flat.headMetres(3)).isEqualTo(5);
        assertThat(flat.headMetres(7)).isEqualTo(5);
    }

    /** 6 − 0.1 q = 0.02 q² at q = (−0.1 + √(0.01 + 0.48)) / 0.04 = 15 L/min, where both give 4.5 m. */
    @Test
    void theDutyPointByHand() {
        Point duty = STRAIGHT.dutyPoint(0.02).orElseThrow();
        assertThat(duty.flowLitresPerMinute()).isCloseTo(15, within(1e-9));
        assertThat(duty.headMetres()).isCloseTo(4.5, within(1e-9));
        ArgumentRange.limits("resistanceMetresPerSquareLitrePerMinute", 0, 1e6, STRAIGHT::dutyPoint);
    }

    /** A combination valve that needs 2 m before it opens: 6 − 0.1 q = 2 + 0.1 q at 20 L/min and 4 m. */
    @Test
    void theDutyPointOnASystemWithALift() {
        Point duty = STRAIGHT.dutyPoint(flow -> 2 + 0.1 * flow).orElseThrow();
        assertThat(duty.flowLitresPerMinute()).isCloseTo(20, within(1e-9));
        assertThat(duty.headMetres()).isCloseTo(4, within(1e-9));
    }

    @Test
    void aSystemThatDoesNotMeetTheCurveHasNoDutyPoint() {
        // At its last point, 20 L/min, this curve still gives 3 m: a resistance of 3 / 400 just reaches it.
        assertThat(BENT.dutyPoint(3.0 / 400)).hasValueSatisfying(
                p -> assertThat(p.flowLitresPerMinute()).isCloseTo(20, within(1e-9)));
        assertThat(BENT.dutyPoint(0.0074)).isEmpty();
        assertThat(BENT.dutyPoint(flow -> 6.01 + flow)).isEmpty();
        assertThat(BENT.dutyPoint(flow -> 6 + flow)).contains(new Point(0, 6));
    }

    @Test
    void aWideOpenSystemRunsAtTheEndOfACurveThatReachesNoHead() {
        assertThat(TypicalCirculator.SIX_METRE.atSetting(2).dutyPoint(0)).hasValueSatisfying(duty -> {
            assertThat(duty.headMetres()).isZero();
            assertThat(duty.flowLitresPerMinute()).isCloseTo(48 * 0.85, within(1e-9));
        });
    }

    /** Half speed: half the flow, a quarter of the head, an eighth of the power. */
    @Test
    void affinity() {
        assertThat(Affinity.flow(40, 0.5)).isEqualTo(20);
        assertThat(Affinity.head(6, 0.5)).isEqualTo(1.5);
        assertThat(Affinity.power(80, 0.5)).isEqualTo(10);
        assertThat(STRAIGHT.atSpeed(0.5).points()).containsExactly(new Point(0, 1.5), new Point(30, 0));
        ArgumentRange.limits("speedRatio", 0.1, 2, ratio -> Affinity.flow(1, ratio));
        ArgumentRange.limits("speedRatio", 0.1, 2, STRAIGHT::atSpeed);
        ArgumentRange.limits("flow", 0, 1e9, flow -> Affinity.flow(flow, 1));
        ArgumentRange.limits("head", 0, 1e9, head -> Affinity.head(head, 1));
        ArgumentRange.limits("power", 0, 1e9, power -> Affinity.power(power, 1));
    }

    /** On a system without lift the duty flow goes with the speed, as the affinity laws say. */
    @Test
    void slowingThePumpSlowsTheFlowInProportion() {
        PumpCurve full = TypicalCirculator.FIVE_METRE.atSetting(3);
        double fullFlow = full.dutyPoint(0.01).orElseThrow().flowLitresPerMinute();
        double slowFlow = full.atSpeed(0.7).dutyPoint(0.01).orElseThrow().flowLitresPerMinute();
        assertThat(slowFlow).isCloseTo(0.7 * fullFlow, Percentage.withPercentage(1e-7));
    }

    @Test
    void typicalCirculatorsAreNamedForTheirHeadAtFullSpeed() {
        assertThat(TypicalCirculator.FIVE_METRE.atSetting(3).headMetres(0)).isEqualTo(5);
        assertThat(TypicalCirculator.SIX_METRE.atSetting(3).headMetres(0)).isEqualTo(6);
        // 6 · 0.65² = 2.535 m at the lowest setting.
        assertThat(TypicalCirculator.SIX_METRE.atSetting(1).headMetres(0)).isCloseTo(2.535, within(1e-12));
        assertThat(TypicalCirculator.SIX_METRE.atSetting(3).headMetres(24)).isCloseTo(4.2, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> TypicalCirculator.SIX_METRE.atSetting(0))
                .withMessage("setting is 0.0; it must lie between 1.0 and 3.0.");
        assertThatIllegalArgumentException().isThrownBy(() -> TypicalCirculator.SIX_METRE.atSetting(4));
    }

    @Test
    void aCurveThatIsNoneIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> curve(0, 6)).withMessageContaining("number of points is 1.0");
        assertThatIllegalArgumentException().isThrownBy(() -> curve(1, 6, 10, 5)).withMessageContaining("first point's");
        assertThatIllegalArgumentException().isThrownBy(() -> curve(0, 6, 10, 6.1))
                .withMessage("The point 10.0 L/min, 6.1 m follows 0.0 L/min, 6.0 m; flow must rise and head must not.");
        assertThatIllegalArgumentException().isThrownBy(() -> curve(0, 6, 10, 5, 10, 4));
        ArgumentRange.limits("flowLitresPerMinute", 0, 10_000, flow -> new Point(flow, 1));
        ArgumentRange.limits("headMetres", 0, 1000, head -> new Point(1, head));
    }

    @Test
    void noCurveEverRisesAndEveryDutyPointLiesOnBoth() {
        long seed = 20260104;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            PumpCurve pump = randomCurve(random);
            double most = pump.mostFlowLitresPerMinute();
            double before = pump.headMetres(0);
            for (int step = 1; step <= 200; step++) {
                double head = pump.headMetres(most * (step / 200.0));
                assertThat(head).as("seed %d, %s at step %d", seed, pump, step).isBetween(0.0, before + 1e-9);
                before = head;
            }
            double resistance = Math.pow(10, -4 + 4 * random.nextDouble());
            pump.dutyPoint(resistance).ifPresent(duty -> {
                double flow = duty.flowLitresPerMinute();
                assertThat(duty.headMetres()).as("seed %d, %s on %s", seed, pump, resistance)
                        .isCloseTo(pump.headMetres(flow), within(1e-9))
                        .isCloseTo(resistance * flow * flow, within(1e-6));
            });
        }
    }

    private static PumpCurve randomCurve(Random random) {
        List<Point> points = new ArrayList<>();
        double flow = 0;
        double head = 2 + 6 * random.nextDouble();
        for (int i = 0; i < 3 + random.nextInt(5); i++) {
            points.add(new Point(flow, head));
            flow += 0.5 + 12 * random.nextDouble();
            head *= random.nextInt(4) == 0 ? 1 : random.nextDouble();
        }
        points.add(new Point(flow, 0));
        return new PumpCurve(points);
    }
}
