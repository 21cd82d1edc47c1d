/** What rules read and what they may conclude. */
package neutralpoint.rulebase.fact;
