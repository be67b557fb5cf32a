/**
 * What an edition of a book has besides its sheets: index and front page, as functions of decided tunes and a style. It
 * decides nothing and knows no file. May use annotation, report, syllabus, words and what lies below them.
 */
@NullMarked
package org.bellowscribe.edition;

import org.jspecify.annotations.NullMarked;
