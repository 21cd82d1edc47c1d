package neutralpoint.consult;

import neutralpoint.catalogue.Finding;

/**
 * A question worth asking.
 *
 * @param gain          expected share of the verdict that its answer would move, per minute on site
 * @param changesCourse how likely its answer is to change the recommended course, 0 to 1
 */
public record NextQuestion(Finding finding, double gain, double changesCourse) {}
