/** The whole call-out as one immutable record, and the file it is kept in. Knows no rules. */
package neutralpoint.job;
