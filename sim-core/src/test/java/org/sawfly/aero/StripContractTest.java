package org.sawfly.aero;

/** The strip model keeps the contract of all models. */
class StripContractTest extends AeroModelContract {
    private static final Pair PAIR = Pair.of(StripModel::of);

    @Override
    Pair pair() {
        return PAIR;
    }
}
