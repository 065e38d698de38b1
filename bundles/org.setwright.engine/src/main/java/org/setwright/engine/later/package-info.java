/** What is worked out only when somebody asks for it. */
package org.setwright.engine.later;
