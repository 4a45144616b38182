#include "app/desktop/window/help_window.h"

#include <QKeyEvent>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "core/units/version.h"

namespace ovenwright::desktop {
namespace {

QString section(const QString& anchor, const QString& title, const QString& text) {
  return QStringLiteral("<h3><a name=\"%1\"></a>%2</h3><p>%3</p>").arg(anchor, title, text);
}

QString helpText() {
  QString text;
  text += section(
      QStringLiteral("start"), HelpWindow::tr("Getting a log in"),
      HelpWindow::tr(
          "Drop a file anywhere in the window, open it (Ctrl+O), or paste its text (Ctrl+Shift+V). It is read by its "
          "content; what was assumed stands in the status line and under Run, How the log was read, where it can be "
          "put "
          "right. The file itself is never changed."));
  text += section(
      QStringLiteral("sentence"), HelpWindow::tr("Sentence"),
      HelpWindow::tr(
          "The verdict first. Each underlined part leads to where it comes from: Tab goes through the parts, Enter "
          "follows one. F8 and Shift+F8 go to the next and previous result that is not a pass; Esc chooses nothing."));
  text += section(
      QStringLiteral("plot"), HelpWindow::tr("Curves"),
      HelpWindow::tr(
          "Bands are the window’s; a stretch with a halo and barbs went out of it. The cursor reads all curves at a "
          "time "
          "and the place in the oven. Wheel zooms time, Ctrl+wheel temperature, drag moves, double click shows the "
          "whole "
          "run. Keys: left and right one sample, with Ctrl one zone, with Shift the view; up and down another "
          "thermocouple; + − 0 zoom and whole run; Alt+1 to 9 show or hide a curve, hottest first."));
  text += section(
      QStringLiteral("strip"), HelpWindow::tr("Zone strip"),
      HelpWindow::tr(
          "Where the board was at each moment, with top and bottom setpoints. Hatched: a result outside its limits "
          "traces back here with 10 % or more."));
  text += section(
      QStringLiteral("tune"), HelpWindow::tr("Tune"),
      HelpWindow::tr(
          "The recipe that was run, to be changed: what the curves and lanes then show is predicted from how this "
          "board heats in this oven, with its error band. Type into a field, step with up and down (PgUp, PgDn by 5), "
          "turn the wheel, or drag up and down; Tab, left and right go from field to field, Del goes back to what was "
          "run, L parts top and bottom or ties them, Ctrl+L keeps a zone as it is in a search. Every edit can be "
          "undone. A suggestion is a prediction: a qualified person confirms it with an instrumented run."));
  text += section(
      QStringLiteral("compare"), HelpWindow::tr("Compare"),
      HelpWindow::tr(
          "Two runs on one clock, lined up at the oven entry or where the first thermocouple rises through a level. A "
          "log that is dropped here becomes B. Setpoints that differ are framed in B, the differences stand under "
          "them. "
          "Each lane has both runs, A over B; its last columns say the smallest margin of each, the largest change "
          "with "
          "its uncertainty, and which has more margin: neither, where they differ by less than their uncertainty. "
          "Enter on a mark leads to the run’s own page."));
  text += section(
      QStringLiteral("lots"), HelpWindow::tr("Lots"),
      HelpWindow::tr(
          "Every run that was kept, the newest first; a click on a heading sorts by it, a second one the other way "
          "round, and so does View, Sort the runs by, or the menu key. The fields above say which runs "
          "are listed, Ctrl+F finds words. Space marks the chosen runs for the sheet, Ctrl+A takes all, Ctrl+C copies "
          "with headings, Enter opens a run on Check with everything it was judged with. Below, a measure over the "
          "runs "
          "of one board and window revision: left and right go from run to run, a square is a run that completes a "
          "signal."));
  text += section(
      QStringLiteral("lanes"), HelpWindow::tr("Limit lanes"),
      HelpWindow::tr(
          "One lane for each requirement, both limits at the same places in all of them, so that the same distance is "
          "the same margin. A mark is a thermocouple, the whisker its ± U, dots the guard band. Up and down another "
          "lane, left and right another thermocouple, Home and End hottest and coldest, Enter how the number came "
          "about, Ctrl+C the row as text, Ctrl+Shift+C the picture."));
  text += section(
      QStringLiteral("table"), HelpWindow::tr("Table"),
      HelpWindow::tr(
          "A click on a heading sorts. Ctrl+F filters. Ctrl+C copies the chosen rows, or all, with headings for a "
          "spreadsheet."));
  text += section(QStringLiteral("board"), HelpWindow::tr("Board"),
                  HelpWindow::tr("Where each thermocouple sits, with its result of the requirement that is chosen "
                                 "beside Show. Left and right, "
                                 "or up and down, go to another thermocouple, Enter shows how its number came about."));
  text += section(
      QStringLiteral("panel"), HelpWindow::tr("How this number came about"),
      HelpWindow::tr(
          "The chosen result step by step: definition, limits with their source, margin, uncertainty by cause, the "
          "decision, and the zones that it traces back to. The arrows at the top go to the result before and after."));
  text += section(
      QStringLiteral("import"), HelpWindow::tr("How the log was read"),
      HelpWindow::tr(
          "Each line at the right was found in the file or assumed. Choose another reading and everything follows at "
          "once; Ctrl+Z takes it back. A reading can be kept for logs of the same shape."));
  text += section(
      QStringLiteral("window"), HelpWindow::tr("Editing a window"),
      HelpWindow::tr(
          "Limits are checked while they are typed and the run is judged anew. Saving makes a new revision in a new "
          "file; nothing is overwritten."));
  text += section(
      QStringLiteral("oven"), HelpWindow::tr("Editing an oven"),
      HelpWindow::tr(
          "Where the zones lie and what the oven allows, checked while it is typed; the zone strip and the oven entry "
          "follow at once, and Tune learns anew. Two ends of a limit stand together or not at all. Saving makes a new "
          "revision in a new file with the comments of the old one; nothing is overwritten. Zones come and go in the "
          "file itself."));
  text += section(
      QStringLiteral("keep"), HelpWindow::tr("Keeping a run"),
      HelpWindow::tr(
          "Run, Keep in the record (Ctrl+K) keeps the run that is shown, or all open logs, for good: the raw log, "
          "window, "
          "oven, recipe and board as they are, and the result. A record stands in a lot; a pass of a log is kept once. "
          "The status line says at its right where records go, a press on it chooses another archive."));
  text += section(
      QStringLiteral("lotsheet"), HelpWindow::tr("Lot sheet"),
      HelpWindow::tr(
          "The sheet of the marked runs as it will be printed, one for each lot; Page Up and Page Down turn its pages. "
          "What was printed or saved as PDF can be marked as printed beside its records. Several lots writes a file "
          "for "
          "each lot into a folder and replaces none without asking."));
  text += section(
      QStringLiteral("keys"), HelpWindow::tr("Keys everywhere"),
      HelpWindow::tr("F6, Shift+F6 next and previous part · F9 panel at the right · Ctrl+Z, Ctrl+Shift+Z undo and "
                     "redo · Ctrl+O open · "
                     "Ctrl+Shift+V paste a log · Ctrl+W close the log · Ctrl+PgUp, Ctrl+PgDown previous and next "
                     "run · F1 this help."));
  return text;
}

}  // namespace

HelpWindow::HelpWindow(QWidget* parent) : QWidget(parent, Qt::Tool), m_text(new QTextBrowser(this)) {
  setWindowTitle(tr("Help"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins({});
  layout->addWidget(m_text);
  m_text->setAccessibleName(tr("Help"));
  m_text->setHtml(helpText());
  resize(fontMetrics().averageCharWidth() * 70, fontMetrics().height() * 28);
}

void HelpWindow::showAbout(const QString& part) {
  m_part = part;
  show();
  raise();
  activateWindow();
  m_text->scrollToAnchor(part);
  m_text->setFocus();
}

void HelpWindow::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) {
    close();
    return;
  }
  QWidget::keyPressEvent(event);
}

QString aboutText() {
  return HelpWindow::
      tr("<h3>Ovenwright %1</h3><p>Analyser for reflow thermal profiles. Free software under the GNU General Public "
         "License, version 3 or later; it comes without any warranty.</p>"
         "<p>What it shows is computed from the log, the window and the placement you give it. A qualified person "
         "confirms every change of setpoints with an instrumented run before production, inside the ratings of the "
         "paste, the parts, the board and the oven. Hot surfaces, moving conveyor, flux fumes: site safety rules, "
         "local "
         "codes and the makers’ data sheets stand above anything shown here. Windows shipped with the program are "
         "general; the paste’s own data sheet is the authority.</p>")
          .arg(QLatin1String(kVersion));
}

}  // namespace ovenwright::desktop
