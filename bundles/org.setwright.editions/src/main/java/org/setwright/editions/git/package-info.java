/** The only package that knows the Git library: repositories, editions in them, work in hand, lines of work, other places. */
package org.setwright.editions.git;
