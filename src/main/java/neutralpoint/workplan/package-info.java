/** The work in this house: steps in order, each with its reason, or what forbids them. */
package neutralpoint.workplan;
