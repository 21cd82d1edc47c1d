package neutralpoint.rulebase.fact;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One step of a work plan; the sentence of the rule that makes it is what is to be done.
 *
 * @param id             what later steps name it by
 * @param stage          the stage of the work, such as isolate or dump
 * @param needs          steps that must be in the plan and come before
 * @param after          steps that come before if they are in the plan
 * @param closes         what it shuts, takes out or sets for the time of the work
 * @param reopens        what it puts back as it was
 * @param minutes        how long it takes, as a rule; 0 or more
 * @param heatsToCelsius how hot it makes the water
 * @param fires          whether the boiler may fire from here on; empty where the step changes nothing about it
 * @param clears         the danger that is over once the step is proved
 * @param words          what is to be done, where a danger's own words stand for the rule's sentence
 * @param added          what the sentence goes on to say of this house; empty for nothing
 */
public record Step(String id, String stage, List<String> needs, List<String> after, Optional<String> closes,
        Optional<String> reopens, double minutes, OptionalDouble heatsToCelsius, Optional<Boolean> fires, Optional<String> clears,
        Optional<Words> words, String added) {

    /** Getting people out or a switch off is a matter of minutes. Common practice, no source. */
    private static final double ASKED_MINUTES = 2;

    /**
     * What a step says in the words of a danger.
     *
     * @param tools with commas between
     */
    public record Words(String says, String proves, String tools) {}

    public static Step called(String id) {
        return new Step(id, "", List.of(), List.of(), Optional.empty(), Optional.empty(), 0, OptionalDouble.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), "");
    }

    /** What a danger asks for now, before anything else. */
    public static Step asked(DangerAsks asked) {
        return new Step(asked.step(), "make-safe", List.of(), asked.after(), Optional.empty(), Optional.empty(), ASKED_MINUTES,
                OptionalDouble.empty(), asked.heatOff() ? Optional.of(false) : Optional.empty(), Optional.empty(),
                Optional.of(new Words(asked.says(), asked.proves(), "none")), "");
    }

    /** What clears a danger on site, before anything that it forbids. */
    public static Step clearing(DangerClears clears) {
        return new Step(clears.step(), clears.first() ? "make-safe" : "repair", List.of(), clears.after(), Optional.empty(), Optional.empty(), clears.minutes(),
                OptionalDouble.empty(), Optional.empty(), clears.last() ? Optional.of(clears.danger()) : Optional.empty(),
                Optional.of(new Words(clears.says(), clears.proves(), clears.tools())), "");
    }

    public Step in(String itsStage) {
        return new Step(id, itsStage, needs, after, closes, reopens, minutes, heatsToCelsius, fires, clears, words, added);
    }

    public Step needs(String... steps) {
        return new Step(id, stage, List.of(steps), after, closes, reopens, minutes, heatsToCelsius, fires, clears, words, added);
    }

    public Step after(String... steps) {
        return new Step(id, stage, needs, List.of(steps), closes, reopens, minutes, heatsToCelsius, fires, clears, words, added);
    }

    public Step closes(String thing) {
        return new Step(id, stage, needs, after, Optional.of(thing), reopens, minutes, heatsToCelsius, fires, clears, words, added);
    }

    public Step reopens(String thing) {
        return new Step(id, stage, needs, after, closes, Optional.of(thing), minutes, heatsToCelsius, fires, clears, words, added);
    }

    /** The danger that is over once this step is proved. */
    public Step clears(String danger) {
        return new Step(id, stage, needs, after, closes, reopens, minutes, heatsToCelsius, fires, Optional.of(danger), words, added);
    }

    /**
     * @param howMany 0 or more
     */
    public Step minutes(double howMany) {
        if (!(howMany >= 0 && howMany < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the minutes of the step " + id + " must be 0 or more, but are " + howMany + ".");
        }
        return new Step(id, stage, needs, after, closes, reopens, howMany, heatsToCelsius, fires, clears, words, added);
    }

    public Step heatsTo(double celsius) {
        return new Step(id, stage, needs, after, closes, reopens, minutes, OptionalDouble.of(celsius), fires, clears, words, added);
    }

    public Step fires(boolean may) {
        return new Step(id, stage, needs, after, closes, reopens, minutes, heatsToCelsius, Optional.of(may), clears, words, added);
    }

    /** What else the sentence says of this house. */
    public Step adding(HouseNote told) {
        return new Step(id, stage, needs, after, closes, reopens, minutes, heatsToCelsius, fires, clears, words, told.says());
    }

    /** True when its words are those of a danger's own entry. */
    public boolean isOfDanger() {
        return words.isPresent();
    }
}
