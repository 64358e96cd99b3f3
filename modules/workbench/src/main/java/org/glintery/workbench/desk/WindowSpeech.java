package org.glintery.workbench.desk;

import org.glintery.api.Refusal;
import org.glintery.workbench.parts.Pictogram;
import org.openide.awt.StatusDisplayer;
import org.openide.util.NbBundle.Messages;

/** Speaks in the main window: in its foot, or on a strip above the foot that stays until it was read. */
public final class WindowSpeech implements Speech {
    private final NoticeStrip strip = new NoticeStrip();

    @Override
    public void say(String sentence) {
        StatusDisplayer.getDefault().setStatusText(sentence);
    }

    @Override
    @Messages("WindowSpeech.warned=Done, but please note")
    public void warn(String sentence) {
        strip.show(Pictogram.NOTE, Bundle.WindowSpeech_warned(), sentence);
    }

    @Override
    public void goOn() {
        strip.putAway();
    }

    @Override
    @Messages("WindowSpeech.refused=Not done")
    public void refuse(Refusal refusal) {
        strip.show(Pictogram.WARNING, Bundle.WindowSpeech_refused(), refusal.text());
    }
}
