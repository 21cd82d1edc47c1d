/** The line diagram of a heating system. */
package neutralpoint.report.schematic;
