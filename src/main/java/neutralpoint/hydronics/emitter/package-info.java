/** Radiators and what they give, how they share the flow, and how much water a system holds. */
package neutralpoint.hydronics.emitter;
