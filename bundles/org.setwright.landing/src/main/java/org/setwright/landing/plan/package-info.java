/** The parts of a landing plan: what is landed where, what is not, and why. */
package org.setwright.landing.plan;
