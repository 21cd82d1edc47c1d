package neutralpoint.rulebase.fact;

/** The remedy of a cause is, in this house, inside the appliance that heats the water. */
public record InsideAppliance(Standing standing) {}
