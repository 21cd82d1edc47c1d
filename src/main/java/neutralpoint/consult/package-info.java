/** Which question next, and when to stop asking. Knows no terminal. */
package neutralpoint.consult;
