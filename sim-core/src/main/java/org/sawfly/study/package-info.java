/**
 * Many flights arranged to answer a question: compare versions, vary a quantity. Start at {@link
 * org.sawfly.study.Workbench}, which answers one scenario. Rows come out in index order and are the same for any number of
 * threads. The only place where chance is drawn, seeded by index. Uncertain inputs: {@link
 * org.sawfly.study.PairedDraws}; best settings: {@link org.sawfly.study.Tune}; throw to throw: {@link
 * org.sawfly.study.Throws}; errors on the bench: {@link org.sawfly.study.Squareness}.
 */
package org.sawfly.study;
