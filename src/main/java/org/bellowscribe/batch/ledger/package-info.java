/**
 * What is remembered of earlier runs in a folder for results: for each tune what its files were made from and what they
 * were. Knows contents by their hashes only; may use nothing of the tool.
 */
@NullMarked
package org.bellowscribe.batch.ledger;

import org.jspecify.annotations.NullMarked;
