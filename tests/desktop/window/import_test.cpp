#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QStatusBar>

#include "app/desktop/import/channels_panel.h"
#include "app/desktop/import/fault_lines.h"
#include "app/desktop/import/file_table.h"
#include "app/desktop/widgets/sentence.h"
#include "tests/desktop/window/window_fixture.h"

namespace ovenwright::desktop {
namespace {

TEST_F(WindowTest, WhatStandsInTheFileShowsTheLinesOfItsFaults) {
  drop({demo("tern_faults.txt")});
  settle();
  const auto view = m_document->view();
  ASSERT_NE(view, nullptr);
  const FaultLines found = faultLines(m_document->current()->source, *view);
  ASSERT_FALSE(found.cells.empty());
  // The file itself is the source: what stands in a marked cell is what cleaning took out, or no number at all.
  for (const auto& cell : found.cells) {
    const auto line = std::ranges::find(found.lines, cell.line, &log::ShownLine::line);
    ASSERT_NE(line, found.lines.end());
    bool number = false;
    const double value = QString::fromStdString(line->cells[std::size_t(cell.column)]).toDouble(&number);
    if (!number) continue;
    bool removed = false;
    for (const auto& channel : view->run().channels)
      for (const auto& fault : channel.faults)
        for (const auto& sample : fault.removed) removed |= std::abs(sample.temperature_C - value) < 1e-9;
    EXPECT_TRUE(removed) << "line " << cell.line << ": " << value;
  }
  FileModel model;
  model.setRun(view, found);
  int marked = 0;
  for (int row = 0; row < model.rowCount(); ++row)
    for (int column = 0; column < model.columnCount(); ++column)
      marked += model.index(row, column).data(FileModel::kFaultRole).toBool();
  EXPECT_EQ(marked, int(found.cells.size()));
}

/// A run of 121 rows, 1 s apart, in which TC2 is a spike of 400 °C at 40 s: one cell that cleaning takes out.
QStringList spikyRow(int second) {
  const double x = second / 120.0, hump = 25 + 800 * x * (1 - x);
  return {QString::number(second), QString::number(hump, 'f', 1),
          second == 40 ? QStringLiteral("400.0") : QString::number(hump - 3, 'f', 1)};
}

void expectTheSpikeAlone(const FaultLines& found) {
  ASSERT_EQ(found.cells.size(), 1u);
  const auto line = std::ranges::find(found.lines, found.cells[0].line, &log::ShownLine::line);
  ASSERT_NE(line, found.lines.end());
  EXPECT_EQ(line->cells[std::size_t(found.cells[0].column)], "400.0");
}

TEST_F(WindowTest, LinesOfFaultsAreFoundAmongLinesThatAreNoRows) {
  QByteArray text("Line 2\nTime (s);TC1 (°C);TC2 (°C)\n");
  for (int second = 0; second <= 120; ++second) {
    if (second % 30 == 10) text += "# door opened\n\nTime (s);TC1 (°C);TC2 (°C)\n";
    text += spikyRow(second).join(u';').toUtf8() + '\n';
  }
  drop({write(QStringLiteral("notes between.csv"), text)});
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
  ASSERT_GT(m_document->view()->reading().read_as.rows_skipped, 0u);
  expectTheSpikeAlone(faultLines(m_document->current()->source, *m_document->view()));
}

TEST_F(WindowTest, LinesOfFaultsAreFoundInATableOfAPage) {
  QByteArray page("<html><body><h1>Line 2</h1><table><tr><th>Time (s)</th><th>TC1 (°C)</th><th>TC2 (°C)</th></tr>\n");
  for (int second = 0; second <= 120; ++second) {
    page += "<tr>";
    for (const QString& cell : spikyRow(second)) page += "<td>" + cell.toUtf8() + "</td>";
    page += "</tr>\n";
  }
  drop({write(QStringLiteral("run.html"), page + "</table></body></html>")});
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
  expectTheSpikeAlone(faultLines(m_document->current()->source, *m_document->view()));
}

TEST_F(WindowTest, LinesOfFaultsAreFoundInEveryForm) {
  QByteArray longer("Time (s),Channel,Temperature (°C)\n"), fixed("  Time (s)  TC1 (°C)  TC2 (°C)\n"), turned;
  QByteArray newest("Time (s),TC1 (°C),TC2 (°C)\n");
  QList<QByteArray> rows{"Time (s)", "TC1 (°C)", "TC2 (°C)"};
  for (int second = 0; second <= 120; ++second) {
    const QStringList cells = spikyRow(second);
    for (int i = 0; i < 3; ++i) {
      rows[i] += ',' + cells[i].toUtf8();
      fixed += cells[i].rightJustified(10).toUtf8();
      if (i > 0) longer += cells[0].toUtf8() + ",TC" + QByteArray::number(i) + ',' + cells[i].toUtf8() + '\n';
    }
    fixed += '\n';
    newest += spikyRow(120 - second).join(u',').toUtf8() + '\n';
  }
  for (const QByteArray& row : rows) turned += row + '\n';
  const std::pair<const char*, QByteArray> logs[] = {
      {"long.csv", longer}, {"fixed.txt", fixed}, {"rows.csv", turned}, {"newest.csv", newest}};
  for (const auto& [name, text] : logs) {
    SCOPED_TRACE(name);
    drop({write(QString::fromLatin1(name), text)});
    settle();
    ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
    expectTheSpikeAlone(faultLines(m_document->current()->source, *m_document->view()));
  }
}

TEST_F(WindowTest, ALogWithACellThatIsNoNumberOffersToLeaveItEmpty) {
  QByteArray text("Time (s);TC1 (°C);TC2 (°C)\n");
  for (int second = 0; second <= 120; ++second) {
    QStringList row = spikyRow(second);
    if (second == 70) row[1] = QStringLiteral("9x.7");
    text += row.join(u';').toUtf8() + '\n';
  }
  drop({write(QStringLiteral("damaged.csv"), text)});
  settle();
  const auto& content = m_window->sentence()->content();
  int cure = -1;
  for (int link = 0; link < int(content.links.size()); ++link)
    if (content.linkText(link) == u"Leave these cells empty") cure = link;
  ASSERT_GE(cure, 0) << shownSentence().toStdString();
  emit m_window->sentence()->activated(content.links[cure]);
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
  const auto& notes = m_document->view()->reading().read_as.notes;
  EXPECT_EQ(std::ranges::count(notes, "1 cell that is no number is left empty: \"9x.7\" in line 72."), 1);
}

const widgets::SentenceLink* linkOf(const widgets::SentenceContent& content, const QString& words) {
  for (int link = 0; link < int(content.links.size()); ++link)
    if (content.linkText(link).contains(words)) return &content.links[link];
  return nullptr;
}

TEST_F(WindowTest, ASuspectInTheSentenceLeadsToWhatCanBeDoneAboutIt) {
  drop({demo("tern_faults.txt")});
  settle();
  const auto* suspect = linkOf(m_window->sentence()->content(), QStringLiteral("plugged in the wrong way round"));
  ASSERT_NE(suspect, nullptr) << shownSentence().toStdString();
  emit m_window->sentence()->activated(widgets::SentenceLink(*suspect));
  QApplication::processEvents();
  ASSERT_NE(m_window->focusWidget(), nullptr);
  EXPECT_TRUE(m_window->focusWidget()->isVisible());
  EXPECT_TRUE(m_window->focusWidget()->accessibleName().startsWith(QStringLiteral("Turn its sign")))
      << m_window->focusWidget()->accessibleName().toStdString();
  // And once it is turned, what says so leads back to it.
  emit qobject_cast<QLabel*>(m_window->focusWidget())->linkActivated(QStringLiteral("#"));
  settle();
  const auto* turned = linkOf(m_window->sentence()->content(), QStringLiteral("turned round"));
  ASSERT_NE(turned, nullptr) << shownSentence().toStdString();
  emit m_window->sentence()->activated(widgets::SentenceLink(*turned));
  EXPECT_TRUE(m_window->focusWidget()->accessibleName().startsWith(QStringLiteral("As in the file")))
      << m_window->focusWidget()->accessibleName().toStdString();
  for (const auto* box : m_window->findChildren<QComboBox*>()) {
    if (!box->isVisible()) continue;
    EXPECT_FALSE(box->currentText().isEmpty()) << box->accessibleName().toStdString();
  }
}

TEST_F(WindowTest, AUnitThatTheNumbersContradictIsToldBesideTheVerdict) {
  // The demo's second run, whose peaks lie near 245 °C, with °F written over its columns.
  QFile file(demo("tern_run2.csv"));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  QByteArray text = file.readAll();
  text.replace(
      "(\xC2\xB0"
      "C)",
      "(\xC2\xB0"
      "F)");
  drop({write(QStringLiteral("doubtful.csv"), text)});
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
  const auto* doubt =
      linkOf(m_window->sentence()->content(), QStringLiteral("no run in the unit that the file states"));
  ASSERT_NE(doubt, nullptr) << shownSentence().toStdString();
  // Once: it is no warning beside that.
  EXPECT_EQ(linkOf(m_window->sentence()->content(), QStringLiteral("warning")), nullptr);
  emit m_window->sentence()->activated(widgets::SentenceLink(*doubt));
  EXPECT_TRUE(m_window->focusWidget()->accessibleName().contains(QStringLiteral("Unit")))
      << m_window->focusWidget()->accessibleName().toStdString();
}

TEST_F(WindowTest, RowsOfAnotherDecimalSignAreNotOfferedToBeLeftOut) {
  // They hold readings: without them a part of the run would be missing.
  QByteArray text("Time (s);TC1 (°C);TC2 (°C)\n");
  for (int second = 0; second <= 120; ++second) {
    QString row = spikyRow(second == 40 ? 41 : second).join(u';');
    row = QString::number(second) + QStringLiteral(".5") + row.mid(row.indexOf(u';'));
    if (second > 60 && second < 66) row.replace(u'.', u',');
    text += row.toUtf8() + '\n';
  }
  drop({write(QStringLiteral("two signs.csv"), text)});
  settle();
  ASSERT_EQ(m_document->view(), nullptr);
  EXPECT_EQ(linkOf(m_window->sentence()->content(), QStringLiteral("Leave these rows out")), nullptr)
      << shownSentence().toStdString();
}

TEST_F(WindowTest, TheChannelsNeverScrollSideways) {
  drop({demo("tern_faults.txt")});
  settle();
  m_window->showImport();
  auto* panel = m_window->findChild<ChannelsPanel*>();
  ASSERT_NE(panel, nullptr);
  for (const int width : {1440, 1280, 1100, 1024, 1920}) {
    m_window->resize(width, 800);
    QTest::qWait(1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !panel->findChild<QScrollArea*>()->horizontalScrollBar()->isVisible(); }))
        << width;
    int cures = 0;
    for (const auto* label : panel->findChildren<QLabel*>())
      cures += label->isVisible() && label->accessibleName().startsWith(QStringLiteral("Turn its sign"));
    EXPECT_EQ(cures, 1) << width;
  }
}

TEST_F(WindowTest, AMessageStandsAloneInTheStatusBar) {
  openDemo();
  const auto readAs = [this] {
    for (const auto* label : m_window->statusBar()->findChildren<QLabel*>())
      if (label->accessibleName().startsWith(QStringLiteral("Read as"))) return label;
    return static_cast<const QLabel*>(nullptr);
  };
  ASSERT_NE(readAs(), nullptr);
  EXPECT_TRUE(readAs()->isVisible());
  m_window->statusBar()->showMessage(QStringLiteral("Copied."));
  m_window->showImport();  // the line under the message is made anew
  EXPECT_FALSE(readAs()->isVisible());
  m_window->statusBar()->clearMessage();
  EXPECT_TRUE(readAs()->isVisible());
}

/// A gzip file of one stored block. Source: RFC 1951, 3.2.4, and RFC 1952, 2.3 and 8 (the check sum).
QByteArray gzipped(const QByteArray& bytes) {
  quint32 crc = 0xFFFFFFFF;
  for (const char byte : bytes) {
    crc ^= quint8(byte);
    for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ (crc & 1 ? 0xEDB88320 : 0);
  }
  const auto little = [](quint32 value, int count) {
    QByteArray out;
    for (int i = 0; i < count; ++i) out += char(value >> (8 * i) & 0xFF);
    return out;
  };
  const auto size = quint32(bytes.size());
  return QByteArray("\x1F\x8B\x08\0\0\0\0\0\0\xFF", 10) + '\x01' + little(size, 2) + little(~size, 2) + bytes +
         little(~crc, 4) + little(size, 4);
}

TEST_F(WindowTest, LinesOfFaultsAreFoundInAPackedLog) {
  QByteArray text("Time (s);TC1 (°C);TC2 (°C)\n");
  for (int second = 0; second <= 120; ++second) text += spikyRow(second).join(u';').toUtf8() + '\n';
  ASSERT_LT(text.size(), 65536);  // what one block holds
  drop({write(QStringLiteral("run.csv.gz"), gzipped(text))});
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
  expectTheSpikeAlone(faultLines(m_document->current()->source, *m_document->view()));
}

TEST_F(WindowTest, LinesOfFaultsAreFoundInASheetOfAWorkbook) {
  QByteArray book(
      "<?xml version=\"1.0\"?>\n<Workbook xmlns=\"urn:schemas-microsoft-com:office:spreadsheet\" "
      "xmlns:ss=\"urn:schemas-microsoft-com:office:spreadsheet\">\n<Worksheet ss:Name=\"Run\"><Table>\n<Row>");
  for (const char* name : {"Time (s)", "TC1 (°C)", "TC2 (°C)"})
    book += "<Cell><Data ss:Type=\"String\">" + QByteArray(name) + "</Data></Cell>";
  book += "</Row>\n";
  for (int second = 0; second <= 120; ++second) {
    book += "<Row>";
    for (const QString& cell : spikyRow(second))
      book += "<Cell><Data ss:Type=\"Number\">" + cell.toUtf8() + "</Data></Cell>";
    book += "</Row>\n";
  }
  drop({write(QStringLiteral("run.xml"), book + "</Table></Worksheet></Workbook>\n")});
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
  const auto found = faultLines(m_document->current()->source, *m_document->view());
  ASSERT_EQ(found.cells.size(), 1u);
  EXPECT_EQ(found.cells[0].line, 42u);  // a heading and 40 rows stand before second 40
  EXPECT_EQ(found.cells[0].column, 2);
}

/// A page with a log of two channels and a shorter one of others; with `damage` a word among the first one's numbers.
QByteArray pageOfTwo(const QString& damage = {}) {
  const auto row = [](const QStringList& cells) {
    return "<tr><td>" + cells.join(u"</td><td>").toUtf8() + "</td></tr>";
  };
  QByteArray page = "<html><body><table>" + row({"Time (s)", "TC1 (°C)", "TC2 (°C)"});
  for (int second = 0; second <= 120; ++second) {
    QStringList cells = spikyRow(second);
    if (second == 70 && !damage.isEmpty()) cells[1] = damage;
    page += row(cells);
  }
  page += "</table><table>" + row({"Time (s)", "Lid (°C)", "Rail (°C)"});
  for (int second = 0; second <= 60; ++second) page += row(spikyRow(2 * second));
  return page + "</table></body></html>";
}

/// The choices of the row Table where it is shown.
QComboBox* tableBox(QWidget* window) {
  for (auto* box : window->findChildren<QComboBox*>())
    if (box->accessibleName() == u"Table" && box->isVisible()) return box;
  return nullptr;
}

void choose(QComboBox* box, int index) {
  box->setCurrentIndex(index);
  emit box->activated(index);
}

TEST_F(WindowTest, AnotherTableOfTheFileIsChosenAndUndone) {
  drop({write(QStringLiteral("two.html"), pageOfTwo())});
  settle();
  m_window->showImport();
  QComboBox* box = tableBox(m_window.get());
  ASSERT_NE(box, nullptr);
  EXPECT_EQ(box->count(), 2);
  EXPECT_EQ(box->currentText(), u"Table 1, 121 rows");
  choose(box, 1);
  settle();
  const auto first = [this] { return m_document->view()->reading().layout.channels.at(0).name; };
  EXPECT_EQ(first(), "Lid");
  EXPECT_EQ(box->currentText(), u"Table 2, 61 rows");
  m_document->undoStack()->undo();
  settle();
  EXPECT_EQ(first(), "TC1");
  EXPECT_EQ(box->currentText(), u"Table 1, 121 rows");
}

TEST_F(WindowTest, AnotherTableIsChosenWhereTheFirstCannotBeRead) {
  drop({write(QStringLiteral("two.html"), pageOfTwo(QStringLiteral("9x.7")))});
  settle();
  ASSERT_EQ(m_document->view(), nullptr);
  EXPECT_TRUE(shownSentence().contains(QStringLiteral("(row 72 of table 1)"))) << shownSentence().toStdString();
  const auto* cure = linkOf(m_window->sentence()->content(), QStringLiteral("Read it another way"));
  ASSERT_NE(cure, nullptr) << shownSentence().toStdString();
  emit m_window->sentence()->activated(widgets::SentenceLink(*cure));
  QComboBox* box = tableBox(m_window.get());
  ASSERT_NE(box, nullptr);
  choose(box, 1);
  settle();
  ASSERT_NE(m_document->view(), nullptr) << shownSentence().toStdString();
  EXPECT_EQ(m_document->view()->reading().layout.channels.at(0).name, "Lid");
}

TEST_F(WindowTest, ALogOfOneTableHasNoChoiceOfTables) {
  drop({demo("tern_run1.csv")});
  settle();
  m_window->showImport();
  EXPECT_EQ(tableBox(m_window.get()), nullptr);
}

}  // namespace
}  // namespace ovenwright::desktop
