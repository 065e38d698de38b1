/** The conductors at the wall: which are fit to be landed, and what they would cost for which need. */
package org.setwright.landing.wall;
