/** Views of an assessment for people and programs. */
package neutralpoint.report;
