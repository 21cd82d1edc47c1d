package neutralpoint.report;

import static neutralpoint.report.JsonFields.fields;
import static neutralpoint.report.JsonFields.rounded;
import static neutralpoint.document.Decimals.rounded;

import java.util.Map;
import neutralpoint.catalogue.Closure;
import neutralpoint.hydronics.Estimate;
import neutralpoint.workplan.DayPlan;
import neutralpoint.workplan.PlanStep;
import neutralpoint.workplan.WorkPlan;
import neutralpoint.workplan.figures.Figure;

/** A work plan as JSON fields, in the stable shape described by workplan.schema.json. */
public final class WorkPlanJson {
    private WorkPlanJson() {}

    public static Map<String, Object> of(WorkPlan p) {
        return fields("job", p.assessment().job().id(),
                "arrangement", p.assessment().arrangement().id(),
                "course", p.course(),
                "method", p.method(),
                "stops", p.assessment().stops().stream().map(s -> fields("id", s.id(), "action", s.action(), "never", s.danger().never(),
                        "who", s.danger().who())).toList(),
                "refusal", p.refusal().map(r -> fields("because", r.because(), "first", r.first(), "then", r.then())),
                "steps", p.steps().stream().map(s -> step(s, p)).toList(),
                "figures", p.figures().stream().map(WorkPlanJson::figure).toList(),
                "dumps", p.quantities().dumps().stream().map(d -> fields("radiator", d.radiator(), "litres", range(d.litres().value()),
                        "minutes", d.minutes().map(m -> range(m.value())))).toList(),
                "day", p.day().spans().stream().map(WorkPlanJson::span).toList(),
                "toMeasure", p.quantities().toMeasure(),
                "bring", p.lists().bring(), "agree", p.lists().agree(), "recordFirst", p.lists().recordFirst(),
                "restore", p.lists().restore(),
                "cautions", p.cautions().stream().map(c -> fields("id", c.id(), "text", c.text(),
                        "harm", c.harm().word(), "moment", c.moment().word())).toList());
    }

    private static Map<String, Object> step(PlanStep s, WorkPlan p) {
        return fields("id", s.id(), "stage", s.stage().word(), "says", s.says(), "because", s.because(), "source", s.source(),
                "tools", s.tools(), "minutes", range(p.minutes(s)), "caution", s.caution(), "proves", s.proves(),
                "needs", s.needs(), "after", s.after(), "closes", s.closes().map(Closure::id),
                "reopens", s.reopens().map(Closure::id), "clears", s.clears(),
                "heatsToCelsius", rounded(s.heatsToCelsius()),
                "boilerMayFire", s.boilerMayFire());
    }

    private static Map<String, Object> figure(Figure f) {
        return fields("id", f.id(), "title", f.title(), "value", range(f.value()), "unit", f.unit(), "sums", f.sums(), "source", f.source());
    }

    private static Map<String, Object> span(DayPlan.Span s) {
        return fields("stage", s.stage(), "start", s.start(), "finish", s.finish(), "minutes", range(s.minutes()));
    }

    private static Map<String, Object> range(Estimate r) {
        return fields("low", rounded(r.low()), "likely", rounded(r.likely()), "high", rounded(r.high()));
    }
}
