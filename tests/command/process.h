#pragma once
#include <string>
#include <vector>

namespace ovenwright {

/// What a process left behind.
struct Finished {
  int status = -1;  ///< exit status; 128 + signal where a signal ended it
  std::string out, err;
};

/// Runs the built program in the source folder, with the shipped profiles of the source tree and no user's folder but
/// what OVENWRIGHT_TEST_DATA_HOME names.
/// @param output  a path to have standard output opened on instead of capturing it
Finished ovenwright_program(const std::vector<std::string>& arguments, const std::string& output = {});

/// A folder of its own that is removed at the end.
class Folder {
 public:
  Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  ~Folder();
  std::string path(const std::string& name) const { return path_ + "/" + name; }
  const std::string& path() const { return path_; }
  std::vector<std::string> names() const;

 private:
  std::string path_;
};

std::string contents(const std::string& path);

}  // namespace ovenwright
