package org.bellowscribe.solver.model;

import java.util.List;
import org.bellowscribe.solver.AirUse;
import org.bellowscribe.solver.LeftHandPlay;
import org.bellowscribe.solver.search.Move;

/**
 * What happens at an event beside the right hand, in one direction.
 *
 * @param leftHand what the left hand does
 * @param air how far the air button is pressed
 * @param move its cost and the air that may pass, in thousandths of a RU.s
 * @param nominal air of all reeds at usual loudness, in thousandths of a RU.s
 */
record Action(List<LeftHandPlay> leftHand, AirUse air, Move move, double nominal) {}
