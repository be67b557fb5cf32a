/**
 * Finds points of a manner of playing under which marks that somebody made come out. Marks are compared with the cheapest
 * ones of the exact search; each difference says in counts of rules' cases what the points must make dearer (a cutting
 * plane). The points that change least and leave the least violated are found by a quadratic program (structured learning
 * with a large margin: Tsochantaridis and others, Journal of Machine Learning Research 6, 2005; one slack for all and
 * cached planes: Joachims, Finley and Yu, Machine Learning 77, 2009). May use solver and what it uses.
 */
@NullMarked
package org.bellowscribe.learning;

import org.jspecify.annotations.NullMarked;
