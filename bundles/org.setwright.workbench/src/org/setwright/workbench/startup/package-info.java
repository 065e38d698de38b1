/** What do I prove when I start the equipment? The start-up checks of the job being looked at, to be read in order. */
package org.setwright.workbench.startup;
