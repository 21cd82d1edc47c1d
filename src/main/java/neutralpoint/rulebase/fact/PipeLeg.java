package neutralpoint.rulebase.fact;

/** A branch of the pipework on which at least two radiators of the survey hang. */
public record PipeLeg(String name) {}
