package understorey.pages.words;

import understorey.kit.LensFit;

/** A lens on a picture in a few words. */
public final class LensWords {

    private LensWords() {
    }

    /** Body and lens, with the focal length of a zoom. */
    public static String cameraAndFocal(LensFit fit) {
        return fit.camera().name() + (fit.camera().lens().zooms() ? " at " + Words.millimetres(fit.focalMm()) : "");
    }
}
