package neutralpoint.rulebase.fact;

/** A caution that must be shown with the verdict. */
public record AttachCaution(String caution) {}
