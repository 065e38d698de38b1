/** Lines that type a rule, and conditions asked in the language of rules. */
package org.setwright.bench.rules;
