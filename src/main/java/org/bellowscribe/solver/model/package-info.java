/**
 * From a tune to integers and back: what could be played at each event with its points, the problem that is made of it, the
 * run of the search, and the marks that its answer means. Used only by the solver and its other rooms.
 */
@NullMarked
package org.bellowscribe.solver.model;

import org.jspecify.annotations.NullMarked;
