/**
 * From a book to an answer: {@link org.setwright.engine.Edition#compile} then {@link org.setwright.engine.Edition#run}.
 */
package org.setwright.engine;
