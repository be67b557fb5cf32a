/**
 * From a tune to integers and back: what could be played at each event with its points, the problem that is made of it, the
 * run of the search, and the marks that its answer means.
 *
 * <p>{@link org.bellowscribe.solver.model.Choices} says what the right hand could do at an event,
 * {@link org.bellowscribe.solver.model.Actions} what the left hand and the air button could do beside it. A choice becomes
 * an option of the search, an action one of its moves. Air is counted in thousandths of a RU·s; an action may take some
 * more or less of it than at usual loudness, and bounds are rounded inwards, so that every integer between them can be
 * played. An action that another one covers (no dearer, and at least its range of air) is left out.
 *
 * <p>Of marks that cost the same points a second order decides ({@link org.bellowscribe.solver.model.SecondOrder}): the
 * marks with the fewest parts of a point. In this order of weight: an equal measure that is played otherwise 6, a reversal
 * 4, a move of the hand 3, a note off the row of the key 2, each finger above the index 1, a pulled note 1; air pressed 1 in
 * the first quarter of the sheet to 4 in the last. The parts go into the costs of the problem, where a point has so many
 * that all parts of the tune together are less than one: whatever costs least there costs least in points too, and every
 * cost that is told is in whole points again ({@link org.bellowscribe.solver.search.Problem#points}). What is equal in both,
 * nearly always on which of two like notes air is pressed or the left hand gives way, goes by the order of choices and
 * actions. Where whole numbers have no room for the parts (a tune of some hundred notes), the points alone decide.
 *
 * <p>Openings have one value per place of the sheet, so one pass proves all passes. Only a pick-up before the repeats may
 * leave the end off the start, and only by its own air; every other tune closes exactly. Where nothing can be played again
 * and again, marks for one time through are looked for.
 *
 * <p>{@link org.bellowscribe.solver.model.EqualMeasures} are measures with the same notes and rests at the same times and the
 * same wanted of the left hand. Used only by the solver and its other rooms.
 */
@NullMarked
package org.bellowscribe.solver.model;

import org.jspecify.annotations.NullMarked;
