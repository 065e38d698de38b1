/** The word bench: the trial bench at a terminal, or over lines from a file or a pipe. */
package org.setwright.command.bench;
