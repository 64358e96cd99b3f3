package org.glintery.workbench.today;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.glintery.api.time.About;
import org.glintery.api.workshop.View;
import org.glintery.api.workshop.Workshop.BackedUp;
import org.glintery.api.workshop.Workshop.Registration;
import org.glintery.workbench.copies.CopyNews;
import org.glintery.workbench.copies.FolderCopying;
import org.glintery.workbench.menu.Copies;
import org.glintery.workbench.parts.Buttons;
import org.glintery.workbench.parts.Pictogram;
import org.glintery.workbench.parts.Space;
import org.glintery.workbench.parts.Texts;
import org.glintery.workbench.parts.WrappedText;
import org.glintery.workbench.spi.Desk;
import org.glintery.workbench.spi.ScreenPart;
import org.glintery.workbench.spi.TodayCard;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;

/** When the workshop was last copied, the button that copies it, and the folder it is copied into by itself. */
@ServiceProvider(service = TodayCard.class)
public final class BackupCard implements TodayCard {
    private static final int POSITION = 900;

    @Override
    @Messages("BackupCard.title=Last copied")
    public String title() {
        return Bundle.BackupCard_title();
    }

    @Override
    public int position() {
        return POSITION;
    }

    @Override
    public ScreenPart<?> create(Desk desk) {
        return new Part(desk);
    }

    /** @param last of all backups, wherever it was put @param second how it stands with the folder copied into by itself */
    record Copied(Optional<BackedUp> last, Optional<FolderCopying.Standing> second) {}

    private static final class Part implements ScreenPart<Copied> {
        private final Desk desk;
        private final WrappedText words = Texts.body("");
        private final SecondFolderRow second;
        private final JPanel panel =
                new JPanel(new MigLayout("insets 0, fillx, wrap 1, gapy " + Space.NEAR, "[grow, fill]")) {
                    private static final long serialVersionUID = 1L;
                    private transient Registration backups = () -> {};

                    @Override
                    public void addNotify() {
                        super.addNotify();
                        backups = CopyNews.listen(Part.this::readAgain);
                    }

                    @Override
                    public void removeNotify() {
                        backups.close();
                        super.removeNotify();
                    }
                };

        @Messages("BackupCard.now=Back up now")
        Part(Desk desk) {
            this.desk = desk;
            second = new SecondFolderRow(desk);
            panel.setOpaque(false);
            panel.add(words, "wmin 0");
            panel.add(Buttons.plain(Pictogram.BACKUP, Bundle.BackupCard_now(), () -> Copies.backUp(desk)), "growx 0");
            panel.add(second, "gaptop " + Space.NEAR);
        }

        @Override
        public Copied prepare(View view) {
            return new Copied(
                    desk.workshop().lastBackup(), SecondFolderRow.copying(desk).flatMap(FolderCopying::standing));
        }

        @Override
        public JComponent component() {
            return panel;
        }

        @Override
        @Messages({
            "BackupCard.never=This workshop has not been copied yet. A backup is one file; keep it on another disk or stick.",
            "# {0} - day",
            "# {1} - file",
            "BackupCard.last={0}, as {1}."
        })
        public void show(Copied copied) {
            words.setText(copied.last().map(this::words).orElseGet(Bundle::BackupCard_never));
            second.show(copied.second());
            panel.revalidate();
        }

        private void readAgain() {
            desk.compute(this::prepare, this::show);
        }

        private String words(BackedUp last) {
            LocalDateTime at = LocalDateTime.ofInstant(last.at(), desk.clock().getZone());
            String day = About.on(at.toLocalDate()).words() + ", " + at.format(DateTimeFormatter.ofPattern("HH:mm"));
            return Bundle.BackupCard_last(day, last.file());
        }
    }
}
