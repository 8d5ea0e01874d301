/**
 * Many flights arranged to answer a question: compare versions, vary a quantity. Rows come out in index order and are
 * the same for any number of threads. The only place where chance is drawn, seeded by index. Uncertain inputs: {@link
 * org.sawfly.study.PairedDraws}; best settings: {@link org.sawfly.study.Tune}.
 */
package org.sawfly.study;
