package org.glintery.activework.ui;

import java.time.Clock;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;
import org.glintery.activework.WorkingTime;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.openide.util.NbBundle.Messages;

/** The sitting that goes on: since when, and ways to pause and end it. Event thread. */
final class RunningStrip extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int TICK_MS = 10_000;
    private static final int BREAK_AFTER_MINUTES = 50;

    /** What the buttons do. */
    interface Acts {
        void begin();

        void pause();

        void goOn();

        void end();
    }

    private final transient Clock clock;
    private final JButton begin;
    private final JButton pause;
    private final JButton goOn;
    private final JButton end;
    private final JLabel time = Texts.figure("");
    private final JLabel rest = Texts.hint(Bundle.RunningStrip_rest());
    private final Timer ticks = new Timer(TICK_MS, e -> tell());
    private transient Optional<WorkingTime> running = Optional.empty();

    @Messages({
        "RunningStrip.begin=Begin a sitting",
        "RunningStrip.pause=Pause",
        "RunningStrip.goOn=Go on",
        "RunningStrip.end=End the sitting",
        "RunningStrip.rest=Time to look up: a break for eyes, neck and hands."
    })
    RunningStrip(Clock clock, Acts acts) {
        super(new MigLayout("insets 0, hidemode 3, gap " + Space.APART));
        setOpaque(false);
        this.clock = clock;
        begin = Buttons.plain(Pictogram.SITTING, Bundle.RunningStrip_begin(), acts::begin);
        pause = Buttons.plain(Pictogram.REST, Bundle.RunningStrip_pause(), acts::pause);
        goOn = Buttons.plain(Pictogram.SITTING, Bundle.RunningStrip_goOn(), acts::goOn);
        end = Buttons.primary(Bundle.RunningStrip_end(), acts::end);
        add(time);
        add(begin);
        add(pause);
        add(goOn);
        add(end);
        add(rest);
    }

    void show(Optional<WorkingTime> now, boolean mayBegin) {
        running = now;
        boolean paused = now.flatMap(WorkingTime::pausedSince).isPresent();
        begin.setVisible(now.isEmpty() && mayBegin);
        pause.setVisible(now.isPresent() && !paused);
        goOn.setVisible(paused);
        end.setVisible(now.isPresent());
        time.setVisible(now.isPresent());
        tell();
    }

    @Messages({
        "# {0} - how long",
        "# {1} - since when",
        "RunningStrip.going={0} since {1}",
        "# {0} - how long",
        "RunningStrip.paused={0}, paused"
    })
    private void tell() {
        Optional<Integer> worked = running.map(time -> time.workedMinutesUntil(clock.instant()));
        boolean paused = running.flatMap(WorkingTime::pausedSince).isPresent();
        time.setText(worked.map(LaidWords::minutes)
                .map(words -> paused ? Bundle.RunningStrip_paused(words) : Bundle.RunningStrip_going(words, since()))
                .orElse(""));
        rest.setVisible(!paused
                && worked.filter(minutes -> minutes >= BREAK_AFTER_MINUTES).isPresent());
    }

    private String since() {
        ZoneId zone = clock.getZone();
        ZonedDateTime start = running.orElseThrow().start().atZone(zone);
        boolean today = start.toLocalDate().equals(ZonedDateTime.now(clock).toLocalDate());
        return start.format(
                today
                        ? DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
                        : DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT));
    }

    @Override
    public void addNotify() {
        super.addNotify();
        ticks.start();
    }

    @Override
    public void removeNotify() {
        ticks.stop();
        super.removeNotify();
    }
}
