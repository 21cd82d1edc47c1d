/** What can be observed, what can be wrong and what can be done: typed, and cross-checked when loaded. */
package neutralpoint.catalogue;
