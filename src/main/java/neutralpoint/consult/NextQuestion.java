package neutralpoint.consult;

import neutralpoint.catalogue.Finding;

/**
 * A question worth asking.
 *
 * @param gain expected share of the verdict that its answer would move, per minute on site
 */
public record NextQuestion(Finding finding, double gain) {}
