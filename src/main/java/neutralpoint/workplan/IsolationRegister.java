package neutralpoint.workplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import neutralpoint.catalogue.Closure;
import neutralpoint.document.Nearest;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.DraftPlan;
import neutralpoint.rulebase.fact.Step;

/** Walks through steps in order and keeps count of what is shut and whether the boiler may fire. */
final class IsolationRegister {
    /** Scale, boiling and scalds: common practice keeps a flush well under this. */
    private static final double TOO_HOT_CELSIUS = 80;

    private final Map<String, Closure> closures;
    private final List<PlanStep> steps = new ArrayList<>();
    /** The id of what is shut, and by which step. */
    private final Map<String, String> shut = new TreeMap<>();
    /** Dangers that somebody else clears and that want heat in the house until then. */
    private final Set<String> heatOn = new TreeSet<>();
    /** Dangers that keep the heat off and are not over yet. */
    private final Set<String> heatOff = new TreeSet<>();
    /** The house is in use until the boiler is switched off. */
    private boolean boilerMayFire = true;

    /**
     * @param closures what may be shut, by id
     * @param stops    the dangers that stand at the start
     */
    IsolationRegister(Map<String, Closure> closures, List<Assessment.StopFound> stops) {
        this.closures = closures;
        stops.stream().filter(s -> s.danger().heat().isOff()).map(Assessment.StopFound::id).forEach(heatOff::add);
        boilerMayFire = heatOff.isEmpty();
        stops.stream().filter(s -> s.isReferral() && s.danger().heat().mustStay() && boilerMayFire).map(Assessment.StopFound::id).forEach(heatOn::add);
    }

    /** @throws IllegalStateException where the step may not be taken as things then stand; the message names it */
    void add(DraftPlan.DraftStep drawn) {
        Step step = drawn.step();
        step.clears().ifPresent(heatOff::remove);
        step.clears().ifPresent(heatOn::remove);
        boilerMayFire = step.fires().orElse(boilerMayFire);
        step.reopens().ifPresent(thing -> {
            if (shut.remove(thing) == null) {
                throw new IllegalStateException("the step " + step.id() + " reopens the " + title(thing)
                        + ", which no step before it closes.");
            }
        });
        step.closes().ifPresent(thing -> {
            if (shut.put(thing, step.id()) != null) {
                throw new IllegalStateException("the step " + step.id() + " closes the " + title(thing) + ", which is closed already.");
            }
        });
        check(step);
        checkWarmth(step);
        steps.add(step(drawn));
    }

    /** All steps; refuses a plan that leaves something shut. */
    List<PlanStep> finished() {
        shut.forEach((thing, step) -> {
            throw new IllegalStateException("the step " + step + " closes the " + title(thing) + ", and no step after it reopens it.");
        });
        return List.copyOf(steps);
    }

    private void check(Step step) {
        step.heatsToCelsius().ifPresent(celsius -> {
            if (!(celsius < TOO_HOT_CELSIUS)) {
                throw new IllegalStateException("the step " + step.id() + " heats the water to " + celsius
                        + " °C; it must stay under 80 °C.");
            }
        });
        if (boilerMayFire && Stage.of(step).letsWaterOut()) {
            throw new IllegalStateException("the step " + step.id() + " lets water out while the boiler may fire.");
        }
        Optional<Closure> relief = shut.keySet().stream().map(this::closure).filter(Closure::relief).findFirst();
        if (boilerMayFire && relief.isPresent()) {
            throw new IllegalStateException("in the step " + step.id() + " the boiler may fire while the " + relief.get().title()
                    + " is closed.");
        }
        if (!heatOff.isEmpty() && (boilerMayFire || step.heatsToCelsius().isPresent())) {
            throw new IllegalStateException("the step " + step.id() + " brings heat while the danger " + heatOff.iterator().next()
                    + " is not over.");
        }
    }

    private void checkWarmth(Step step) {
        if (!heatOn.isEmpty() && !boilerMayFire) {
            throw new IllegalStateException("the step " + step.id() + " takes the heat away while the danger " + heatOn.iterator().next()
                    + " is not over.");
        }
    }

    private Closure closure(String id) {
        return Optional.ofNullable(closures.get(id)).orElseThrow(() -> new IllegalStateException("\"" + id + "\" is not a known closure"
                + Nearest.hint(id, closures.keySet())));
    }

    private String title(String id) {
        return closure(id).title();
    }

    private PlanStep step(DraftPlan.DraftStep drawn) {
        Step step = drawn.step();
        Step.Words words = step.words().orElseGet(() -> new Step.Words(drawn.rule().says(), drawn.rule().note("proves"),
                drawn.rule().note("tools")));
        String says = step.added().isBlank() ? words.says() : words.says() + " " + step.added().strip();
        return new PlanStep(step.id(), Stage.of(step), says, drawn.rule().because(), drawn.rule().source(),
                Planner.commaList(words.tools()), step.minutes(),
                Optional.of(drawn.rule().note("caution")).filter(Predicate.not(String::isBlank)), words.proves(), step.needs(),
                step.after(), step.closes().map(this::closure), step.reopens().map(this::closure), step.heatsToCelsius(),
                step.clears(), boilerMayFire);
    }
}
