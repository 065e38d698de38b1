/** The editor of rule files: colours and meanings of words. Problems come from the desk as marks. */
package org.setwright.workbench.rules;
