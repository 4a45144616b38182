#include "core/window/classification.h"

#include <gtest/gtest.h>

#include <string>

namespace ovenwright::window {
namespace {

struct Case {
  const char* name;
  Classification classification;
  double thickness_mm, volume_mm3, want_C;
};
void PrintTo(const Case& c, std::ostream* os) { *os << c.name; }
class ClassificationTemperature : public testing::TestWithParam<Case> {};

// Source: IPC/JEDEC J-STD-020D.1 and E, tables 4-1 (SnPb) and 4-2 (Pb-free), every cell and both sides of every
// boundary. Exact: the tables hold whole degrees.
TEST_P(ClassificationTemperature, IsTheCellOfTheStandard) {
  EXPECT_EQ(classification_temperature_C(GetParam().classification, GetParam().thickness_mm, GetParam().volume_mm3),
            GetParam().want_C);
}

constexpr auto kSnPb = Classification::kTinLead;
constexpr auto kPbFree = Classification::kLeadFree;
std::string name_of(const testing::TestParamInfo<Case>& info) { return info.param.name; }

INSTANTIATE_TEST_SUITE_P(
    Table4_1_SnPb, ClassificationTemperature,
    testing::Values(Case{"thin_small", kSnPb, 1.0, 100, 235}, Case{"thin_large", kSnPb, 1.0, 1000, 220},
                    Case{"thick_small", kSnPb, 3.0, 100, 220}, Case{"thick_large", kSnPb, 3.0, 1000, 220},
                    Case{"just_under_both", kSnPb, 2.4999, 349.999, 235},
                    Case{"exactly_2_5_mm", kSnPb, 2.5, 349.999, 220}, Case{"exactly_350_mm3", kSnPb, 2.4999, 350, 220}),
    name_of);

INSTANTIATE_TEST_SUITE_P(
    Table4_2_PbFree, ClassificationTemperature,
    testing::Values(Case{"thin_small", kPbFree, 1.0, 100, 260}, Case{"thin_middle", kPbFree, 1.0, 1000, 260},
                    Case{"thin_large", kPbFree, 1.0, 3000, 260}, Case{"middle_small", kPbFree, 2.0, 100, 260},
                    Case{"middle_middle", kPbFree, 2.0, 1000, 250}, Case{"middle_large", kPbFree, 2.0, 3000, 245},
                    Case{"thick_small", kPbFree, 3.0, 100, 250}, Case{"thick_middle", kPbFree, 3.0, 1000, 245},
                    Case{"thick_large", kPbFree, 3.0, 3000, 245}, Case{"just_under_1_6_mm", kPbFree, 1.5999, 3000, 260},
                    Case{"exactly_1_6_mm", kPbFree, 1.6, 3000, 245}, Case{"exactly_2_5_mm", kPbFree, 2.5, 100, 260},
                    Case{"just_over_2_5_mm", kPbFree, 2.5001, 100, 250},
                    Case{"just_under_350_mm3", kPbFree, 2.0, 349.999, 260},
                    Case{"exactly_350_mm3", kPbFree, 2.0, 350, 250}, Case{"exactly_2000_mm3", kPbFree, 2.0, 2000, 250},
                    Case{"just_over_2000_mm3", kPbFree, 2.0, 2000.001, 245},
                    Case{"thick_exactly_350_mm3", kPbFree, 3.0, 350, 245},
                    Case{"thick_exactly_2000_mm3", kPbFree, 3.0, 2000, 245}),
    name_of);

}  // namespace
}  // namespace ovenwright::window
