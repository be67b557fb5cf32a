/**
 * Reading of the project's own XML data files against their schemas, with the place of every element. May use
 * diagnostic.
 */
@NullMarked
package org.bellowscribe.definition;

import org.jspecify.annotations.NullMarked;
