/** Water moving in pipes: friction, fittings, valves, pumps and circuits. */
package neutralpoint.hydronics.pipework;
