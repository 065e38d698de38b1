/** What a line changed: settings, cautions, findings, start-up checks, expectations, and what is still to find out. */
package org.setwright.bench.changes;
