/** What can be done with a key about a problem, or about the rule under the cursor. */
package org.setwright.writing.fix;
