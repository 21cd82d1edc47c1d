/** The Drools session: facts in, one assessment out. Rules derive, Java sums. */
package neutralpoint.rulebase;
