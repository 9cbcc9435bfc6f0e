package understorey.brief;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.ComposeAdvice;
import understorey.exposure.Settings;
import understorey.exposure.Tones;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.SunDirection;
import understorey.optics.GroundView;
import understorey.optics.ThinLens;
import understorey.plan.Compose;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.Subject;
import understorey.visit.ExpectedSky;

/** What to look for when a picture is framed, as far as it can be computed; the most pressing first. */
final class Composition {

    /** An even sky is as bright as a surface that reflects all light of the open ground. */
    private static final double WHITE_STOPS = Tones.aboveMidGrey(1);
    /** A smaller share of the frame does not matter, nor does a tenth of a distance: common practice, no source. */
    private static final double LEAST_SHARE = 0.05;
    private static final double NEAR_ENOUGH = 0.9;
    /** A flower that takes more of the shorter side of the frame has no margin: common practice, no source. */
    private static final double WITHOUT_MARGIN = 0.8;
    /** Nearer trees hide those beyond: common practice, no source. */
    private static final double FAR_TREES_M = 60;
    /** From here on a picture shows a flower and not a place: common practice, no source. */
    private static final double CLOSE_UP = 0.05;

    private final Site site;
    private final TimedShot shot;
    private final LensFit fit;
    private final Settings settings;
    private final List<Advice> advice = new ArrayList<>();

    private Composition(Site site, TimedShot shot, LensFit fit, Settings settings) {
        this.site = site;
        this.shot = shot;
        this.fit = fit;
        this.settings = settings;
    }

    /** Nothing for a picture that no camera can take. */
    static List<Advice> of(Site site, TimedShot shot) {
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        if (fit == null || settings == null) {
            return List.of();
        }
        Composition composition = new Composition(site, shot, fit, settings);
        if (fit.magnification() >= CLOSE_UP) {
            composition.closeUp();
        } else {
            composition.view();
        }
        return List.copyOf(composition.advice);
    }

    private void closeUp() {
        advice.add(new ComposeAdvice.LookBehindFlower());
        Double widthMm = fit.flowerWidthMm();
        if (widthMm == null) {
            return;
        }
        double share = widthMm / 1000 / Math.min(fit.frameWidthM(), fit.frameHeightM());
        if (share > WITHOUT_MARGIN) {
            double fits = fit.magnification() * Intent.HEAD_FILLS / share;
            advice.add(new ComposeAdvice.FlowerOverfills(share, ThinLens.subjectMm(fit.actingFocalMm(), fits) / 1000));
        } else {
            double ofWidth = widthMm / 1000 / fit.frameWidthM();
            advice.add(widthMm.equals(written().subject().headWidthMm()) ? new ComposeAdvice.HeadFills(ofWidth)
                    : new ComposeAdvice.FlowerFills(ofWidth));
        }
    }

    private void view() {
        if (fit.looksDown()) {
            advice.add(new ComposeAdvice.KeepFeetOut());
            return;
        }
        GroundView ground = fit.ground(0);
        foreground(ground);
        sky();
        Compose compose = written().compose();
        if (compose == null || compose.leadIn() == null) {
            advice.add(new ComposeAdvice.LookForLine());
        }
        plant(ground);
        trees();
    }

    /** Plants that reach up to the lens are nearer than any ground. */
    private void foreground(GroundView ground) {
        double nearestM = ground.nearestDepthM();
        Double flowersM = written().subject().heightM();
        if (Double.isInfinite(nearestM) || flowersM != null && flowersM >= fit.heightM()) {
            return;
        }
        advice.add(nearestM < NEAR_ENOUGH * settings.sharpFromM() ? new ComposeAdvice.ForegroundSoft(ground.nearestM(),
                ground.distanceAtDepthM(settings.sharpFromM())) : new ComposeAdvice.ForegroundSharp(ground.nearestM()));
    }

    /** A bracket whose darkest frame holds the sky needs no word, and mist veils the sky. */
    private void sky() {
        if (settings.inMist()) {
            return;
        }
        double topRow = Math.tan(Math.toRadians(fit.view().verticalDeg() / 2));
        double skyRow = Math.tan(Math.toRadians(Math.min(89, fit.tiltDeg() + landDeg())));
        double share = Math.min(1, (topRow - skyRow) / (2 * topRow));
        if (share >= LEAST_SHARE) {
            double over = skyEv() - settings.ev100() + WHITE_STOPS;
            int darkestStops = settings.bracketStops().get(0);
            if (over + darkestStops >= Tones.HEADROOM_STOPS) {
                advice.add(new ComposeAdvice.SkyWhite(share, over));
            } else if (darkestStops == 0 && !towardsSun()) {
                advice.add(new ComposeAdvice.SkyHeld(share));
            }
        }
    }

    /** The sky around the sun is brighter than the rest of it. */
    private boolean towardsSun() {
        SunDirection now = shot.sunlight() == null ? null : shot.sunlight().now();
        return now != null && now.where() != SunDirection.Where.AWAY;
    }

    /** Top of the land before the camera: the skyline, or a bank that rises. */
    private double landDeg() {
        Double facing = written().facingDeg();
        return Math.max(shot.intent().riseDeg(), facing == null ? shot.light().place().skyline().evenDeg()
                : shot.light().place().skyline().angleDeg(facing));
    }

    /**
     * Light of the sky alone on open ground, EV at ISO 100, in proportion to the cloud. The sky near the horizon differs
     * from its mean: a standard overcast one is 1.2 stops darker (CIE), a clear one brighter.
     */
    private double skyEv() {
        LightAt.OpenEv open = shot.light().open();
        Double okta = shot.weather().okta();
        double cloudy = (okta == null ? ExpectedSky.MIDDLE.okta() : okta) / SkyWord.OVERCAST.okta();
        return open.shade() + cloudy * (open.overcast() - open.shade());
    }

    private void plant(GroundView ground) {
        double nearestM = ground.nearestDepthM();
        Subject subject = written().subject();
        Double heightM = subject.heightM();
        if (heightM != null && nearestM < settings.sharpToM()) {
            double shownM = Math.max(nearestM, settings.sharpFromM());
            double share = heightM / (2 * shownM * Math.tan(Math.toRadians(fit.view().verticalDeg() / 2)));
            if (share <= 1) {
                advice.add(new ComposeAdvice.NearestPlant(share, ground.distanceAtDepthM(shownM)));
            }
        }
    }

    /** A frame that ends on the ground shows no rhythm of trunks. */
    private void trees() {
        Double heightM = site.canopyAt(site.spot(written().spot())).heightM();
        if (heightM == null || heightM <= fit.heightM()) {
            return;
        }
        double topDeg = fit.view().verticalDeg() / 2 - fit.tiltDeg();
        if (topDeg < shot.intent().riseDeg()) {
            return;
        }
        double fromM = topDeg <= 0 ? Double.POSITIVE_INFINITY : (heightM - fit.heightM()) / Math.tan(Math.toRadians(topDeg));
        advice.add(fromM > FAR_TREES_M ? new ComposeAdvice.TrunksOnly() : new ComposeAdvice.TreesWholeFrom(heightM, fromM));
    }

    private Shot written() {
        return shot.intent().shot();
    }
}
