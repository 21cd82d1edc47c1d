package neutralpoint.workplan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import neutralpoint.catalogue.Closure;

/**
 * One step of a plan as it is carried out.
 *
 * @param id             what other steps name it by
 * @param says           what to do
 * @param because        why
 * @param source         where that comes from
 * @param tools          what is needed for it
 * @param minutes        how long it takes as a rule, 0 or more; for one radiator where it is done to each in turn
 * @param caution        a caution to read before it
 * @param proves         the check that proves it done
 * @param needs          steps that come before and without which it may not be done
 * @param after          steps that come before where they are in the plan
 * @param closes         what it shuts, takes out or sets for the time of the work
 * @param reopens        what it puts back as it was
 * @param heatsToCelsius how hot it makes the water
 * @param clears         the danger that is over once it is proved
 * @param boilerMayFire  whether the boiler may fire during it
 */
public record PlanStep(String id, Stage stage, String says, String because, String source, List<String> tools, double minutes,
        Optional<String> caution, String proves, List<String> needs, List<String> after, Optional<Closure> closes,
        Optional<Closure> reopens, OptionalDouble heatsToCelsius, Optional<String> clears, boolean boilerMayFire) {}
