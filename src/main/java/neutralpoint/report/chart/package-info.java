/** Pictures of readings: strips of radiators, and pressure against temperature. */
package neutralpoint.report.chart;
