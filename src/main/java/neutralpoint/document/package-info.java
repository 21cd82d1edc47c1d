/** Files as trees whose every value knows its line: reading JSON and YAML strictly, writing JSON safely. */
package neutralpoint.document;
