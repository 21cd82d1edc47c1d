/** Readings of a job turned into findings and figures by the sums of {@code hydronics}. Knows no rules. */
package neutralpoint.workings;
