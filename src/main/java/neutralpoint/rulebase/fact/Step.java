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
 */
public record Step(String id, String stage, List<String> needs, List<String> after, Optional<String> closes,
        Optional<String> reopens, double minutes, OptionalDouble heatsToCelsius, Optional<Boolean> fires) {

    public static Step called(String id) {
        return new Step(id, "", List.of(), List.of(), Optional.empty(), Optional.empty(), 0, OptionalDouble.empty(), Optional.empty());
    }

    public Step in(String itsStage) {
        return new Step(id, itsStage, needs, after, closes, reopens, minutes, heatsToCelsius, fires);
    }

    public Step needs(String... steps) {
        return new Step(id, stage, List.of(steps), after, closes, reopens, minutes, heatsToCelsius, fires);
    }

    public Step after(String... steps) {
        return new Step(id, stage, needs, List.of(steps), closes, reopens, minutes, heatsToCelsius, fires);
    }

    public Step closes(String thing) {
        return new Step(id, stage, needs, after, Optional.of(thing), reopens, minutes, heatsToCelsius, fires);
    }

    public Step reopens(String thing) {
        return new Step(id, stage, needs, after, closes, Optional.of(thing), minutes, heatsToCelsius, fires);
    }

    /**
     * @param howMany 0 or more
     */
    public Step minutes(double howMany) {
        if (!(howMany >= 0 && howMany < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("the minutes of the step " + id + " must be 0 or more, but are " + howMany + ".");
        }
        return new Step(id, stage, needs, after, closes, reopens, howMany, heatsToCelsius, fires);
    }

    public Step heatsTo(double celsius) {
        return new Step(id, stage, needs, after, closes, reopens, minutes, OptionalDouble.of(celsius), fires);
    }

    public Step fires(boolean may) {
        return new Step(id, stage, needs, after, closes, reopens, minutes, heatsToCelsius, Optional.of(may));
    }
}
