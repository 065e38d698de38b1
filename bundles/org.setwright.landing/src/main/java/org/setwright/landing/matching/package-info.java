/** Which conductor serves which need at the least cost; a weighted assignment solved by JGraphT. */
package org.setwright.landing.matching;
