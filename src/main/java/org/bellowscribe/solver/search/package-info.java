/**
 * The search: finds the cheapest assignment of an integer {@link org.bellowscribe.solver.search.Problem} and proves it.
 * Knows no music, no file, no clock and no randomness; may use the JDK only. All its classes speak the words below.
 *
 * <h2>Words</h2>
 *
 * <pre>
 *                                 jump k (back to head 2)
 *                            +-----------------------------+
 *                            v                             |
 *   start --[0]--o--[1]--o--[2]--o--[3]--o--[4]--o--[5]--o-+-[6]--o end
 *           anchor        anchor                  \
 *          |-- stretch 0 -|------- stretch 1 ------\-------------|
 *                                                   +--[7]--o   (second ending: 4 has two children)
 *
 *   [e] event     o place, with one opening     parent --&gt; child: tree edge
 * </pre>
 *
 * <ul>
 *   <li><b>event e</b>, its <b>options c</b> (i for the event before, j for the one after), and the <b>moves m</b> of an
 *       option: how much air passes and what that costs. The moves' amounts open the bellows (sign 1) or close them (-1);
 *   <li><b>place</b>: a gap between events, with one <b>opening</b> on every pass; places that a flow edge joins are one;
 *   <li><b>flow edge k</b>: a pair of events that follow each other somewhere in the order of play. The first visits make a
 *       tree: the <b>parent u</b> of an event and its <b>children f</b>. Every other edge is a <b>jump</b>;
 *   <li><b>head</b>: the event a jump goes to, the first of a loop. An event inside the loop remembers which option its head
 *       took, the <b>context x</b>, so that the pair cost of the jump is exact. Where loops overlap only the shortest is
 *       remembered, and a jump to another head is charged the least of its pair costs;
 *   <li><b>state</b>: an event with a context and an option (a cell of work, expanded once a pass);
 *   <li><b>anchor a</b>: a place that a jump touches, or the start. Openings are counted from the last anchor passed, so a
 *       loop that leaves an anchor at 0 comes back to it at 0, however open the bellows are there. Its <b>rise</b> is how far
 *       it lies above the anchor before it;
 *   <li><b>stretch</b>: the events between anchors, counted from the same anchor;
 *   <li><b>ring</b>: a tune that is played again is a ring of events and may be cut anywhere;
 *   <li><b>unit</b>: what one point costs. Costs are finer than points where the layer above ranks answers of as many points;
 *       to the search they are one number, and only its steps are counted in units;
 *   <li><b>node</b>: for each anchor the openings it may have, for each rise an interval, for some heads the options they may
 *       take; the root allows all;
 *   <li><b>limit</b>: the cost above which a pass finds nothing; <b>ceiling</b>: what a pass knows beforehand of the rest of
 *       the tune, by which it leaves out what cannot stay within the limit;
 *   <li><b>corridor</b>: for each state the openings that a finished pass has left within its limit, with the cost of the
 *       rest: the ceiling of the passes under that node;
 *   <li><b>price</b>: a Lagrange multiplier for the air that passes before a place with a given opening; <b>refund</b>: what
 *       is given back for it;
 *   <li><b>zone</b>: openings at which the end of an event costs the same; <b>charge</b>: the least of it that a pass can be
 *       sure of, because an anchor's opening is known as an interval only. It is nothing at a wide node and exact where the
 *       interval is one opening;
 *   <li><b>toll</b>: any charge that the layer above has put on an option or a move, such as the multipliers of equal
 *       measures; to the search it is a cost like others;
 *   <li><b>potential</b>: about what it costs from the first event of a stretch to the end of the tune.
 * </ul>
 *
 * <h2>How it goes</h2>
 *
 * Least costs are step functions of the bellows' opening, found backwards over the flow tree
 * ({@link org.bellowscribe.solver.search.AirPass}). Playing again makes a ring of the order of play, and
 * {@link org.bellowscribe.solver.search.Turned} cuts that ring at a loop: a pick-up then needs no opening of its own.
 *
 * <p>At the root ({@link org.bellowscribe.solver.search.RootPass}) {@link org.bellowscribe.solver.search.Prices} give a lower
 * bound that knows of the bellows by pricing air at the loops' ends (Lagrangian relaxation), and a pass drops whatever that
 * bound shuts out. Where nothing is found at that bound, and the limit is not near it, {@link org.bellowscribe.solver.search.Stretches} looks at the
 * stretches from the last to the first, each charged with what it costs to go on
 * ({@link org.bellowscribe.solver.search.Beyond}), so that a long tune is hardly more than the sum of its parts.
 *
 * <p>A pass is exact but for what is still relaxed: that all stretches agree on the anchors' openings within the bellows, and
 * jumps to heads that are not remembered. The cheapest marks of a pass ({@link org.bellowscribe.solver.search.Trace}) are
 * checked by the difference constraints of their openings ({@link org.bellowscribe.solver.search.Openings}). Where they fail,
 * {@link org.bellowscribe.solver.search.Deepening} parts the node ({@link org.bellowscribe.solver.search.Branches},
 * {@link org.bellowscribe.solver.search.Cut}); a part looks only inside the {@link org.bellowscribe.solver.search.Corridor}
 * of the node before it, within a limit that rises slowly, because a limit a little too high costs more than another round.
 * With one anchor a given start is a single exact pass: after two rounds five starts are tried
 * ({@link org.bellowscribe.solver.search.Starts}), and the best of them becomes the limit. Work is bounded in expanded
 * states; where the bound strikes without an answer, given starts are tried.
 *
 * <p>A pass counts openings in one of two ways ({@link org.bellowscribe.solver.search.Frame}). From the last anchor: loops
 * close exactly, but the ends of the bellows and what an opening costs are known only as far as the anchor's interval is
 * narrow. Or as they are: those are exact, and a loop comes back to its anchor's interval only. With one anchor and one
 * stretch the root is looked at in both ways and its parts in the better one; with one anchor and several stretches a part
 * takes openings as they are once its interval is narrow; with more anchors they are counted from the anchors. A corridor
 * of the first kind is widened by the interval for a pass of the second. Where the bellows drift this takes the place of
 * many halvings of the start.
 *
 * <p>What an opening costs is part of all this: a pass adds the charge at the end of each event, once (the corridor leaves an
 * event's own charge out of the cost at its end and hands it on), and a node is closed only when its marks have openings
 * ({@link org.bellowscribe.solver.search.Placement}) that cost no more than what was charged. The bounds without openings do
 * not know of it, and stay true. An answer carries the openings that its cost was counted at.
 * {@link org.bellowscribe.solver.search.CalmOpenings} moves them, within their zones, to the calmest that the marks may have.
 */
@NullMarked
package org.bellowscribe.solver.search;

import org.jspecify.annotations.NullMarked;
