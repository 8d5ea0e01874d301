/**
 * Many flights arranged to answer a question: compare versions, vary a quantity. Rows come out in index order and are
 * the same for any number of threads. The only place where chance is drawn, seeded by index.
 */
package org.sawfly.study;
