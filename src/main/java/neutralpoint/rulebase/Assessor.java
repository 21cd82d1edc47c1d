package neutralpoint.rulebase;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Cause;
import neutralpoint.catalogue.Caution;
import neutralpoint.catalogue.Course;
import neutralpoint.catalogue.Phase;
import neutralpoint.job.Job;
import neutralpoint.rulebase.fact.AlsoCures;
import neutralpoint.rulebase.fact.Arrangement;
import neutralpoint.rulebase.fact.AttachCaution;
import neutralpoint.rulebase.fact.BarsCourse;
import neutralpoint.rulebase.fact.ComesBefore;
import neutralpoint.rulebase.fact.Contradiction;
import neutralpoint.rulebase.fact.Evidence;
import neutralpoint.rulebase.fact.Explains;
import neutralpoint.rulebase.fact.ExtraStep;
import neutralpoint.rulebase.fact.ForbidsHandling;
import neutralpoint.rulebase.fact.LeadsTo;
import neutralpoint.rulebase.fact.Likely;
import neutralpoint.rulebase.fact.Needs;
import neutralpoint.rulebase.fact.PlannedWork;
import neutralpoint.rulebase.fact.Remedy;
import neutralpoint.rulebase.fact.Settled;
import neutralpoint.rulebase.fact.Standing;
import neutralpoint.rulebase.fact.Stop;
import neutralpoint.rulebase.fact.Strength;
import neutralpoint.workings.Calculation;

/** Judges a job. One assessment is a pure function of the job's answers: a fresh session each time. */
public final class Assessor {
    private static final String OPEN_NOTHING = "What is closed and where hangs on the kind of system, and two answers cannot both be right.";

    private final RuleBase rules;
    private final Catalogue catalogue;
    private final BiFunction<RuleInfo, Strength, Strength> grading;

    public Assessor(RuleBase rules, Catalogue catalogue) {
        this(rules, catalogue, (rule, strength) -> strength);
    }

    /**
     * @param grading the strength to give a rule's evidence, for trying how far a verdict hangs on it
     */
    public Assessor(RuleBase rules, Catalogue catalogue, BiFunction<RuleInfo, Strength, Strength> grading) {
        this.rules = rules;
        this.catalogue = catalogue;
        this.grading = grading;
    }

    public Assessment assess(Job job) {
        try (Session session = rules.open()) {
            return assess(job, session);
        }
    }

    /**
     * Has the steps of the work drawn up.
     *
     * @param method the method of cleansing to plan for; when empty, the course recommended is planned
     */
    public DraftPlan plan(Job job, Optional<String> method) {
        try (Session session = rules.open()) {
            return new PlanDrafter(catalogue, session, assess(job, session)).draft(method);
        }
    }

    /** Ids of all rules that conclude something from a job, whichever of the methods open to it is planned. */
    public Set<String> rulesFired(Job job) {
        try (Session session = rules.open()) {
            new PlanDrafter(catalogue, session, assess(job, session)).tellAll();
            return session.rulesFired();
        }
    }

    /** What this job comes to, short of the work itself. */
    public Outlook outlook(Job job) {
        try (Session session = rules.open()) {
            return outlook(job, session);
        }
    }

    Outlook outlook(Job job, Session session) {
        Weighed judged = judge(job, session);
        return new Outlook(job, judged.system(), judged.causes(), judged.verdict().course());
    }

    /** What speaks for and against each kind of system, and what bars a course, in this job. */
    public Grounds grounds(Job job) {
        try (Session session = rules.open()) {
            judge(job, session);
            UnaryOperator<String> family = finding -> catalogue.finding(finding).family();
            Map<String, List<WeighedEvidence>> arrangements = new TreeMap<>();
            Ledger.each(catalogue.arrangements().values(), ArrangementKind::id, ArrangementKind::priorDecibans, evidence(session, "arrangement"),
                    family, new HashMap<>()).forEach((kind, ledger) -> arrangements.put(kind.id(), ledger.entries()));
            Map<String, List<String>> bars = new TreeMap<>();
            session.all(BarsCourse.class).forEach(b -> bars.computeIfAbsent(b.fact().course(), c -> new ArrayList<>()).add(b.rule().because()));
            return new Grounds(arrangements, bars);
        }
    }

    /** For trying other answers to a job; to be closed. */
    public WhatIf whatIf(Job job) {
        WhatIf whatIf = new WhatIf(this, rules.openLive());
        whatIf.of(job);
        return whatIf;
    }

    /** All that is concluded up to the one course. */
    private record Weighed(Job known, List<Calculation> workedOut, Assessment.RecognisedSystem system, WaterPaths paths, List<Assessment.CauseStanding> causes,
            LeadingCause chief, MethodChoice methods, CourseChoice choice, List<Assessment.StopFound> stops, Assessment.Verdict verdict) {}

    private Weighed judge(Job job, Session session) {
        UnaryOperator<String> family = finding -> catalogue.finding(finding).family();
        List<Calculation> workedOut = Survey.workOut(job, session);
        Job known = Emergencies.told(Survey.complete(job, workedOut), catalogue);
        session.insertAndFire(Facts.of(known, catalogue));
        Assessment.RecognisedSystem system = new ArrangementWeighing(catalogue, family)
                .weigh(evidence(session, "arrangement"), session.all(Contradiction.class), session.ledgers("arrangement"));
        session.insertAndFire(List.of(new Arrangement(system.id(), system.status(), system.traits(), system.possibleTraits())));
        WaterPaths paths = WaterPaths.of(session);
        session.insertAndFire(paths.facts());

        List<Assessment.CauseStanding> ranked = causes(session, system, family);
        session.insertAndFire(ranked.stream().filter(Assessment.CauseStanding::isActive).map(c -> new Likely(c.id())).toList());
        LeadingCause chief = LeadingCause.of(known, ranked, session.all(LeadsTo.class));
        List<Assessment.CauseStanding> causes = chief.first(ranked);
        session.insertAndFire(causes.stream().filter(c -> c.isPossible() || chief.is(c)).map(c -> standing(c, chief.is(c))).toList());

        MethodChoice methods = new MethodChoice(catalogue, evidence(session, "method"), session.all(ForbidsHandling.class), family,
                session.ledgers("method"));
        CourseChoice choice = new CourseChoice(catalogue, system, paths, methods, session.all(Remedy.class), session.all(BarsCourse.class),
                new CompetenceCheck(catalogue, known, session.all(Needs.class)));
        List<Assessment.StopFound> stops = StandingDangers.standing(session.all(Stop.class), catalogue, known, system.traits());
        return new Weighed(known, workedOut, system, paths, causes, chief, methods, choice, stops,
                choice.verdict(stops, chief, causes, disputes(causes)));
    }

    private Assessment assess(Job job, Session session) {
        Weighed j = judge(job, session);
        session.insertAndFire(StandingDangers.facts(j.stops()));
        List<Assessment.WorkStep> order = order(session, j);
        session.insertAndFire(work(j.verdict(), order));
        if (!order.isEmpty()) {
            order = WorkOrder.withAlsoDo(order, session.all(ExtraStep.class));
        }
        Optional<Assessment.Cleansing> cleansing = cleansing(j.methods(), j.verdict(), order);
        return new Assessment(job, j.known(), j.workedOut(), j.stops(), j.system(), j.paths(), j.causes(), j.verdict(), cleansing, order,
                cautions(session, j.stops(), cleansing));
    }

    /** Weighs the causes twice: what the first weighing settles may explain signs that then stop speaking for rivals. */
    private List<Assessment.CauseStanding> causes(Session session, Assessment.RecognisedSystem system, UnaryOperator<String> family) {
        List<Derived<Evidence>> evidence = evidence(session, "evidence");
        List<CauseWeighing.WeighedCause> first = CauseWeighing.weigh(catalogue, system, evidence, family, session.ledgers("evidence"));
        session.insertAndFire(first.stream().filter(CauseWeighing.WeighedCause::isSettled).map(w -> new Settled(w.id())).toList());
        List<Derived<Explains>> explains = session.all(Explains.class);
        return CauseWeighing.ranked(explains.isEmpty() ? first
                : CauseWeighing.again(first, system, evidence, family, ExplainingAway.of(explains)));
    }

    private List<Assessment.WorkStep> order(Session session, Weighed j) {
        List<Assessment.StopFound> stops = j.stops();
        if (stops.stream().anyMatch(Assessment.StopFound::isReferral)) {
            // Nothing is to be done here until somebody else has made it safe.
            return List.of();
        }
        List<WorkOrder.ToDo> toDo = j.causes().stream()
                .filter(c -> c.isActive() || j.chief().is(c))
                .map(c -> new WorkOrder.ToDo(c, j.choice().choose(c)))
                .filter(t -> j.stops().stream().noneMatch(s -> s.danger().answers().contains(t.standing().id())))
                .filter(t -> stops.isEmpty() || !t.chosen().course().cleanses()).filter(t -> !t.chosen().isOnlyALook()).toList();
        List<Assessment.WorkStep> work = new WorkOrder(session.all(ComesBefore.class), session.all(LeadsTo.class), session.all(AlsoCures.class))
                .steps(toDo);
        return Stream.of(stops.stream().flatMap(this::clearing), lookingAgain(j.system(), work), work.stream())
                .flatMap(steps -> steps).toList();
    }

    /** While two answers cannot both be right, they are looked at again before anything on the wet side is touched. */
    private static Stream<Assessment.WorkStep> lookingAgain(Assessment.RecognisedSystem system, List<Assessment.WorkStep> work) {
        boolean wet = work.stream().flatMap(s -> s.course().stream()).anyMatch(Course::wet);
        return system.contradictions().isEmpty() || !wet ? Stream.empty()
                : Stream.of(new Assessment.WorkStep(Optional.empty(), Optional.empty(), Phase.SAFETY,
                        String.join(" ", system.contradictions()) + " Open nothing before that.", List.of(OPEN_NOTHING)));
    }

    /** What clears a danger comes before all other work, and is the repair of the causes it answers. */
    private Stream<Assessment.WorkStep> clearing(Assessment.StopFound stop) {
        return stop.clearing().stream().map(c -> new Assessment.WorkStep(Optional.of(catalogue.course(stop.course())), Optional.empty(),
                Phase.SAFETY, c.says(), List.of(stop.because())));
    }

    /** How to carry out the course, or else the first step of the order that cleanses. */
    private static Optional<Assessment.Cleansing> cleansing(MethodChoice methods, Assessment.Verdict verdict,
            List<Assessment.WorkStep> order) {
        return Stream.concat(Stream.of(verdict.course()), order.stream().flatMap(s -> s.course().stream()))
                .filter(Course::cleanses).findFirst().flatMap(methods::of);
    }

    /** The causes and arrangements that some rule moves, and the courses one bars, because of this finding. */
    public List<String> movedBy(String finding) {
        return rules.movedBy(finding);
    }

    private List<Derived<Evidence>> evidence(Session session, String folder) {
        return session.all(Evidence.class, rule -> rule.folder().equals(folder)).stream()
                .map(e -> graded(e, grading.apply(e.rule(), e.fact().strength()))).toList();
    }

    private static Derived<Evidence> graded(Derived<Evidence> e, Strength strength) {
        Evidence graded = e.fact().graded(strength);
        return graded.equals(e.fact()) ? e : new Derived<>(e.rule(), graded);
    }

    /** A sentence for each cause that one deciding test settles and another excludes. */
    private static List<String> disputes(List<Assessment.CauseStanding> causes) {
        return causes.stream().filter(Assessment.CauseStanding::isDisputed).map(c -> "Two deciding tests disagree about \""
                + c.cause().title() + "\"; do both again: " + c.evidence().stream()
                .filter(e -> e.kind() == Evidence.Kind.SETTLES || e.kind() == Evidence.Kind.EXCLUDES)
                .map(e -> e.finding() + " (" + e.value() + ")").distinct().collect(Collectors.joining(", ")) + ".").toList();
    }

    private static Standing standing(Assessment.CauseStanding c, boolean chief) {
        String status = c.isSettled() || !c.isActive() ? c.status() : "likely";
        return new Standing(c.id(), status, c.probability(), chief, c.cause().course(), c.cause().phase().word(), c.cause().needs());
    }

    private static List<PlannedWork> work(Assessment.Verdict verdict, List<Assessment.WorkStep> order) {
        List<PlannedWork> work = new ArrayList<>();
        String chief = verdict.chief().map(Assessment.CauseStanding::id).orElse("");
        work.add(new PlannedWork(verdict.course().id(), chief, verdict.chief().map(c -> c.cause().phase().word()).orElse(""), true));
        for (Assessment.WorkStep s : order) {
            String cause = s.cause().map(Cause::id).orElse("");
            if (!cause.equals(chief)) {
                s.course().ifPresent(course -> work.add(new PlannedWork(course.id(), cause, s.phase().word(), false)));
            }
        }
        return work;
    }

    private List<Caution> cautions(Session session, List<Assessment.StopFound> stops, Optional<Assessment.Cleansing> cleansing) {
        Set<String> wanted = new HashSet<>();
        stops.forEach(s -> wanted.addAll(s.cautions()));
        session.all(AttachCaution.class).forEach(a -> wanted.add(a.fact().caution()));
        cleansing.ifPresent(c -> wanted.addAll(c.method().cautions()));
        return catalogue.cautions(wanted);
    }
}
