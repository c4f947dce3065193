// Counts the pairs of triangles that cross each other or lie over each other, with exact predicates (CGAL, Polygon Mesh
// Processing). Input, little-endian: uint32 vertices, uint32 triangles, float64 x y z of each vertex, uint32 a b c of each
// triangle of a mesh without boundary. Exit code 2: cut off; 3: no such mesh. Output: the count, how
// far the deepest pair reach through each other, then "x y z" of the middle of the first triangle of up to ten pairs.
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Polygon_mesh_processing/self_intersections.h>
#include <CGAL/Surface_mesh.h>
#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <iterator>
#include <utility>
#include <vector>

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;

using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Face = Mesh::Face_index;

static std::vector<Kernel::Point_3> corners_of(const Mesh &mesh, Face face) {
  std::vector<Kernel::Point_3> corners;
  for (auto vertex : mesh.vertices_around_face(mesh.halfedge(face))) corners.push_back(mesh.point(vertex));
  return corners;
}

// How far one triangle reaches to both sides of the other's plane: the smaller of the two reaches.
static double reach(const std::vector<Kernel::Point_3> &one, const std::vector<Kernel::Point_3> &other) {
  const auto normal = CGAL::cross_product(other[1] - other[0], other[2] - other[0]);
  const double length = std::sqrt(normal.squared_length());
  double above = 0, below = 0;
  for (const auto &corner : one) {
    const double height = length == 0 ? 0 : (corner - other[0]) * normal / length;
    above = std::max(above, height);
    below = std::max(below, -height);
  }
  return std::min(above, below);
}

template <typename Number> static std::vector<Number> take(std::size_t count) {
  std::vector<Number> numbers(count);
  if (std::fread(numbers.data(), sizeof(Number), count, stdin) != count) std::exit(2);
  return numbers;
}

int main() {
  const auto counts = take<std::uint32_t>(2);
  const auto coordinates = take<double>(3 * std::size_t(counts[0]));
  const auto corners = take<std::uint32_t>(3 * std::size_t(counts[1]));
  Mesh mesh;
  using Vertex = Mesh::Vertex_index;
  for (std::size_t i = 0; i < coordinates.size(); i += 3)
    mesh.add_vertex({coordinates[i], coordinates[i + 1], coordinates[i + 2]});
  for (std::size_t i = 0; i < corners.size(); i += 3)
    if (mesh.add_face(Vertex(corners[i]), Vertex(corners[i + 1]), Vertex(corners[i + 2])) == mesh.null_face()) return 3;
  std::vector<std::pair<Face, Face>> pairs;
  CGAL::Polygon_mesh_processing::self_intersections(mesh, std::back_inserter(pairs));
  double deepest = 0;
  for (const auto &pair : pairs) {
    const auto one = corners_of(mesh, pair.first), other = corners_of(mesh, pair.second);
    deepest = std::max(deepest, std::min(reach(one, other), reach(other, one)));
  }
  std::printf("%zu\n%.3g\n", pairs.size(), deepest);
  for (std::size_t i = 0; i < pairs.size() && i < 10; i++) {
    const auto corners = corners_of(mesh, pairs[i].first);
    const auto middle = CGAL::centroid(corners[0], corners[1], corners[2]);
    std::printf("%.6g %.6g %.6g\n", middle.x(), middle.y(), middle.z());
  }
}
