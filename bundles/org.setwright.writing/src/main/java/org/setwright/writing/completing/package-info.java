/** What may be written next in half-written jobs, tables and settings. */
package org.setwright.writing.completing;
