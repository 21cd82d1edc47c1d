package neutralpoint.report;

import static neutralpoint.report.JsonFields.fields;
import static neutralpoint.report.JsonFields.rounded;
import static neutralpoint.document.Decimals.rounded;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Danger;
import neutralpoint.consult.NextQuestion;
import neutralpoint.job.Answer;
import neutralpoint.job.EmergencyLog;
import neutralpoint.job.JobFile;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.RuleInfo;
import neutralpoint.rulebase.WaterPaths;
import neutralpoint.rulebase.WeighedEvidence;
import neutralpoint.workings.Calculation;

/** An assessment as JSON fields, in the stable shape described by assessment.schema.json. */
public final class AssessmentJson {
    private AssessmentJson() {}

    /** The same with the questions to ask next. */
    public static Map<String, Object> of(Assessment a, List<NextQuestion> next) {
        Map<String, Object> out = of(a);
        out.put("next", next.stream().map(q -> fields("finding", q.finding().id(), "question", q.finding().ask(),
                "minutes", q.finding().minutes(), "gain", rounded(q.gain()),
                "outcomes", q.outcomes().stream().map(o -> fields("answer", o.answer().id(), "course", o.course().id())).toList())).toList());
        return out;
    }

    public static Map<String, Object> of(Assessment a) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("job", a.job().id());
        out.put("emergencies", EmergencyLog.fields(a.job().emergencies()));
        out.put("stops", a.stops().stream().map(s -> fields("id", s.id(), "title", s.title(), "action", s.action(),
                "now", s.now().stream().map(Danger.Act::says).toList(), "never", s.danger().never(), "who", s.danger().who(),
                "heatMeanwhile", s.danger().heat().meanwhile().word(), "over", s.danger().over(), "because", s.because(),
                "rules", s.rules().stream().map(RuleInfo::id).toList())).toList());
        out.put("arrangement", fields("id", a.arrangement().id(), "title", a.arrangement().title(),
                "status", a.arrangement().status(), "features", a.arrangement().features(),
                "contradictions", a.arrangement().contradictions()));
        out.put("paths", fields("relief", a.paths().reliefState(), "waters", a.paths().watersState(),
                "filling", a.paths().filling().isEmpty() ? "known" : "doubtful",
                "greatestPressureBar", rounded(a.paths().limitBar()),
                "looks", a.paths().doubts().stream().map(WaterPaths.PathSign::look).distinct().toList()));
        out.put("workedOut", a.workedOut().stream().map(w -> fields("finding", w.finding().map(Calculation.Found::id),
                "answer", w.finding().map(f -> answer(f.answer())), "grade", w.grade().word(), "says", w.says(),
                "sums", w.sums())).toList());
        out.put("causes", a.causes().stream().map(c -> fields("id", c.id(), "title", c.cause().title(),
                "status", c.status(), "decibans", rounded(c.decibans()), "probability", rounded(c.probability()),
                "evidence", c.evidence().stream().map(AssessmentJson::evidence).toList())).toList());
        out.put("course", fields("id", a.verdict().course().id(), "title", a.verdict().course().title(),
                "standing", a.verdict().certainty().word(), "because", a.verdict().because()));
        out.put("unexplained", a.unexplained().stream().map(u -> fields("finding", u.finding(), "value", u.value(), "wouldBeExplainedBy",
                u.second().id())).toList());
        out.put("cleansing", a.cleansing().map(AssessmentJson::cleansing));
        out.put("order", a.order().stream().map(s -> fields("course", s.course().map(Course::id),
                "cause", s.cause().map(Cause::id), "phase", s.phase().word(), "action", s.action(),
                "because", String.join(" ", s.because()))).toList());
        out.put("cautions", a.cautions().stream().map(c -> fields("id", c.id(), "text", c.text(),
                "authority", c.authority(), "harm", c.harm().word(), "moment", c.moment().word())).toList());
        return out;
    }

    private static Object answer(Answer answer) {
        return answer instanceof Answer.Reading reading ? rounded(reading.value()) : JobFile.value(answer);
    }

    private static Map<String, Object> evidence(WeighedEvidence e) {
        Map<String, Object> out = fields("finding", e.finding(), "value", e.value(), "decibans", rounded(e.decibans()),
                "rule", e.rule().id(), "because", e.rule().because(), "source", e.rule().source());
        e.explainedBy().ifPresent(by -> out.put("explainedBy", by));
        return out;
    }

    private static Map<String, Object> cleansing(Assessment.Cleansing c) {
        return fields("course", c.course().id(), "method", c.method().id(), "title", c.method().title(), "because", c.because(),
                "ruledOut", c.ruledOut().stream().map(r -> fields("method", r.method().id(), "because", r.because())).toList(),
                "avoid", c.avoid().stream().map(v -> fields("handling", v.handling().id(), "because", v.because())).toList());
    }
}
