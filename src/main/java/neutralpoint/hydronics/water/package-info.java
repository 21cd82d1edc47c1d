/** Water and steam: density, heat, viscosity, head, boiling, and glycol mixtures. */
package neutralpoint.hydronics.water;
