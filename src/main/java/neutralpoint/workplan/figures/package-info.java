/** The figures of a work plan, worked out from one house. */
package neutralpoint.workplan.figures;
