"""A pad as a solid for a router or a printer: binary STL in mm, lying on its flange side, top edge away from you.

Its base is the flange's outline, and how far it rises at each corner is the pad's thickness there, measured fore and aft as
the fit gives it. Without holes: they are drilled through the flange, square to it, once it is seated.
"""

from __future__ import annotations

import struct
from itertools import chain

from service.core.fit.shapes import Pad

Vertex = tuple[float, float, float]
Triangle = tuple[Vertex, Vertex, Vertex]
HEADER = 80
LEAST = 1e-9


def write_pad(pad: Pad) -> bytes:
    """Return the pad as binary STL: closed, every face's corners anticlockwise from outside."""
    triangles = solid(pad)
    label = f"{pad.role} pad, {pad.width_mm:g} x {pad.height_mm:g} mm".encode("ascii", "replace")[:HEADER]
    body = b"".join(struct.pack("<12fH", *_normal(t), *chain.from_iterable(t), 0) for t in triangles)
    return label.ljust(HEADER) + struct.pack("<I", len(triangles)) + body


def solid(pad: Pad) -> list[Triangle]:
    """Return the faces of the pad. A corner of no thickness is one point above and below: what vanishes there is left out."""
    half_w, half_h = pad.width_mm / 2, pad.height_mm / 2
    # looked at from the skin, port is to the right: x is to port
    places = {"port": half_w, "starboard": -half_w, "top": half_h, "bottom": -half_h}
    flat: list[Vertex] = []
    risen: list[Vertex] = []
    for corner in ("bottom starboard", "bottom port", "top port", "top starboard"):
        level, side = corner.split()
        x, y = places[side], places[level]
        flat.append((x, y, 0.0))
        risen.append((x, y, max(pad.corners_mm[corner], 0.0)))
    faces = [
        (flat[0], flat[2], flat[1]),
        (flat[0], flat[3], flat[2]),
        (risen[0], risen[1], risen[2]),
        (risen[0], risen[2], risen[3]),
    ]
    for n in range(4):
        m = (n + 1) % 4
        faces += [(flat[n], flat[m], risen[m]), (flat[n], risen[m], risen[n])]
    return [face for face in faces if len(set(face)) == len(face)]


def volume(triangles: list[Triangle]) -> float:
    """Return the volume enclosed (mm³): a sixth of the sum of the corners' triple products."""
    total = 0.0
    for (ax, ay, az), (bx, by, bz), (cx, cy, cz) in triangles:
        total += ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx)
    return total / 6.0


def _normal(triangle: Triangle) -> Vertex:
    (ax, ay, az), (bx, by, bz), (cx, cy, cz) = triangle
    ux, uy, uz, vx, vy, vz = bx - ax, by - ay, bz - az, cx - ax, cy - ay, cz - az
    nx, ny, nz = uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx
    length = (nx * nx + ny * ny + nz * nz) ** 0.5
    return (nx / length, ny / length, nz / length) if length > LEAST else (0.0, 0.0, 0.0)
