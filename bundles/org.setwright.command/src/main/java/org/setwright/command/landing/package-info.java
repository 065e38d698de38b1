/** The word "landing": which conductor is landed where. */
package org.setwright.command.landing;
