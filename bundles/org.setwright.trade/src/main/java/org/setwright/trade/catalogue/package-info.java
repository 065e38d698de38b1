/**
 * How the trade is described: answers with units and a first-class unknown, and the catalogue entry of every fact and
 * setting. {@link org.setwright.trade.catalogue.Catalogue} is the list that rules, forms, files and reports read.
 */
package org.setwright.trade.catalogue;
