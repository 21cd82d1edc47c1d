/** What a sample of water tells: hardness, pH, conductivity, metals, and the limits set for them. */
package neutralpoint.hydronics.chemistry;
