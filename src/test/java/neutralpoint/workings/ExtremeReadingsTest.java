package neutralpoint.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import neutralpoint.Shared;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import org.junit.jupiter.api.Test;

/** One figure in a table is enough: heat and pressure are told by whatever holds them. Limits: common practice, no source. */
class ExtremeReadingsTest {
    @Test
    void oneTailNearBoilingIsNamedWithItsRadiator() {
        Job job = Shared.job("""
                {"radiators": [{"name": "hall", "floor": "ground", "topCelsius": 70, "baseCelsius": 64},
                 {"name": "bath", "floor": "first", "flowTailCelsius": 96}], "findings": {}}""");
        assertThat(ExtremeReadings.of(job)).extracting(Calculation::says).containsExactly("The hottest reading is 96 °C, at bath.");
    }

    @Test
    void noRowIsCalledHealthyAtSuchHeat() {
        Job job = Shared.job("{\"radiators\": [{\"name\": \"hall\", \"floor\": \"ground\", \"topCelsius\": 92, \"baseCelsius\": 88}], \"findings\": {}}");
        assertThat(SurveyedRadiator.of(job)).extracting(SurveyedRadiator::stateShown).containsExactly("too hot");
        assertThat(Workings.of(job, SurveyedRadiator.of(job))).noneMatch(w -> w.grade() == Calculation.Grade.PASS);
    }

    @Test
    void nobodyTurnsUpABoilerThatBoils() {
        Assessment a = Shared.ASSESSOR.assess(Shared.job("""
                {"radiators": [{"name": "hall", "floor": "ground", "topCelsius": 100, "baseCelsius": 96}],
                 "findings": {"red-lines": [], "complaint": ["all-lukewarm"], "heating-filled-by": "loft-tank"}}"""));
        assertThat(a.stops()).extracting(Assessment.StopFound::id).contains("boiling");
        assertThat(a.cause("flow-temperature-low").orElseThrow().status()).isEqualTo("excluded");
    }

    @Test
    void ordinaryReadingsSayNothingExtreme() {
        Job job = Shared.job("""
                {"radiators": [{"name": "hall", "floor": "ground", "topCelsius": 70, "baseCelsius": 64}],
                 "gauge": [{"at": "2026-11-02T08:00", "bar": 1.2, "waterCelsius": 15}], "findings": {}}""");
        assertThat(ExtremeReadings.of(job)).isEqualTo(List.of());
    }

    @Test
    void theHighestLoggedPressureCountsAndNotTheLast() {
        Job job = Shared.job("""
                {"gauge": [{"at": "2026-11-02T08:00", "bar": 3.6, "waterCelsius": 70}, {"at": "2026-11-02T20:00", "bar": 0.4, "waterCelsius": 15}],
                 "findings": {}}""");
        assertThat(ExtremeReadings.of(job)).extracting(Calculation::says)
                .containsExactly("The highest logged pressure is 3.6 bar; the safety valve is set to 3.");
        assertThat(Shared.ASSESSOR.assess(job).stops()).extracting(Assessment.StopFound::id).containsExactly("safety-valve-does-not-lift");
    }
}
