/** Water, heat and flow: pure functions, each with its units, its range and its source. Knows nothing else but how numbers are written. */
package neutralpoint.hydronics;
