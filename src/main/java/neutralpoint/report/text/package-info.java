/** How wide and in what colours a report is written. */
package neutralpoint.report.text;
