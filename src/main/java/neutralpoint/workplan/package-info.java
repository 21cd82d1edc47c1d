/** The work in this house: steps in order, each with its reason, its figures and its lists, or what forbids them. */
package neutralpoint.workplan;
