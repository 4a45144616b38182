// Heavy headers that most files here need: 21 s once instead of 8 s for each.
#pragma once
#include <qcustomplot.h>

#include <QtConcurrent>
#include <QtWidgets>
