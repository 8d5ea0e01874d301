package org.sawfly.aero;

/** The fast model keeps the contract of all models. */
class TailVolumeContractTest extends AeroModelContract {
    private static final Pair PAIR = Pair.of(TailVolumeModel::of);

    @Override
    Pair pair() {
        return PAIR;
    }
}
