package neutralpoint.workplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import neutralpoint.rulebase.Draft;
import neutralpoint.rulebase.fact.Step;

/** Walks through steps in order and keeps count of what is shut and whether the boiler may fire. */
final class Itinerary {
    /** Scale, boiling and scalds: common practice keeps a flush well under this. */
    private static final double TOO_HOT_CELSIUS = 80;
    /** Ways by which a boiler's water expands, is relieved or moves on. Shut, they forbid firing. */
    private static final Set<String> RELIEF = Set.of("cold feed", "open vent", "combined feed and vent", "expansion vessel",
            "boiler valves", "gravity pair", "tank outlet");

    private final List<PlanStep> steps = new ArrayList<>();
    /** What is shut, and by which step. */
    private final Map<String, String> shut = new TreeMap<>();
    /** The house is in use until the boiler is switched off. */
    private boolean boilerMayFire = true;

    void add(Draft.Drawn drawn) {
        Step step = drawn.step();
        boilerMayFire = step.fires().orElse(boilerMayFire);
        step.reopens().ifPresent(thing -> {
            if (shut.remove(thing) == null) {
                throw new IllegalStateException("the step " + step.id() + " reopens the " + thing + ", which no step before it closes.");
            }
        });
        step.closes().ifPresent(thing -> {
            if (shut.put(thing, step.id()) != null) {
                throw new IllegalStateException("the step " + step.id() + " closes the " + thing + ", which is closed already.");
            }
        });
        check(step);
        steps.add(step(drawn));
    }

    /** All steps; refuses a plan that leaves something shut. */
    List<PlanStep> finished() {
        shut.forEach((thing, step) -> {
            throw new IllegalStateException("the step " + step + " closes the " + thing + ", and no step after it reopens it.");
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
        Optional<String> relief = shut.keySet().stream().filter(RELIEF::contains).findFirst();
        if (boilerMayFire && relief.isPresent()) {
            throw new IllegalStateException("in the step " + step.id() + " the boiler may fire while the " + relief.get() + " is closed.");
        }
    }

    private PlanStep step(Draft.Drawn drawn) {
        Step step = drawn.step();
        return new PlanStep(step.id(), Stage.of(step), drawn.rule().says(), drawn.rule().because(), drawn.rule().source(),
                Planner.commaList(drawn.rule().note("tools")), step.minutes(),
                Optional.of(drawn.rule().note("caution")).filter(Predicate.not(String::isBlank)), drawn.rule().note("proves"),
                step.needs(), step.after(), step.closes(), step.reopens(), step.heatsToCelsius(), boilerMayFire);
    }
}
