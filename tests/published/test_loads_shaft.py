"""Tubes and the overhanging shaft against tables, another frame program and an independent eigenvalue solution."""

from __future__ import annotations

import numpy as np
import pytest
from Pynite import FEModel3D
from scipy.linalg import eigh

from service.core.loads import shaft, tube, vibration

STEEL = 193_000.0
# Closed forms by hand: D, t, A, I, W, Wpl, kg/m at 7.98 g/cm³, yield moment in kN·m at 205 MPa.
TUBES = [
    (50.8, 1.5, 232.32, 70647.0, 2781.38, 3646.86, 1.854, 0.570),
    (50.8, 1.6, 247.31, 74909.0, 2949.17, 3874.39, 1.974, 0.605),
    (50.8, 2.0, 306.62, 91427.8, 3599.52, 4765.55, 2.447, 0.738),
    (50.8, 2.5, 379.35, 110918.3, 4366.86, 5837.43, 3.027, 0.895),
    (50.8, 3.0, 450.50, 129173.1, 5085.56, 6863.52, 3.595, 1.043),
    (50.8, 3.2, 478.53, 136141.0, 5359.88, 7261.35, 3.819, 1.099),
    (50.8, 4.0, 588.11, 162187.9, 6385.35, 8782.29, 4.693, 1.309),
    (50.8, 5.0, 719.42, 190885.0, 7515.16, 10529.87, 5.741, 1.541),
    (50.8, 6.35, 886.74, 223471.9, 8798.10, 12631.70, 7.076, 1.804),
    (25.4, 2.0, 147.03, 10136.7, 798.17, 1097.79, 1.173, 0.164),
    (31.75, 2.0, 186.92, 20773.5, 1308.57, 1772.79, 1.492, 0.268),
    (38.1, 3.0, 330.81, 51317.3, 2693.82, 3705.03, 2.640, 0.552),
    (48.3, 3.2, 453.39, 115856.5, 4797.37, 6519.75, 3.618, 0.984),
]


@pytest.mark.parametrize(("outside", "wall", "area", "inertia", "modulus", "plastic", "mass", "moment"), TUBES)
def test_tubes(
    outside: float, wall: float, area: float, inertia: float, modulus: float, plastic: float, mass: float, moment: float
) -> None:
    got = tube.section(outside, wall)
    assert float(got.area) == pytest.approx(area, abs=6e-3)
    assert float(got.inertia) == pytest.approx(inertia, abs=0.06)
    assert float(got.modulus) == pytest.approx(modulus, abs=6e-3)
    assert float(got.plastic) == pytest.approx(plastic, abs=6e-3)
    assert float(got.area) * 7.98e-3 == pytest.approx(mass, abs=6e-4)
    assert float(tube.bending_stress(1000 * moment, got.modulus)) == pytest.approx(
        205, abs=0.55 / moment * 0.205
    )  # the table rounds to 1 N·m


# EN 10210/10219 table inside eurocodepy 2026.1.1 (read): cm², cm⁴, cm³, cm³; only columns that are not shifted there.
EUROPEAN = [
    (48.3, 3.2, 4.53, 11.6, 4.80, 6.52),
    (48.3, 4.0, 5.57, 13.8, 5.70, 7.87),
    (60.3, 3.2, 5.74, 23.5, 7.78, 10.4),
    (60.3, 5.0, 8.69, 33.5, 11.1, 15.3),
    (33.7, 3.2, 3.07, 3.60, 2.14, 2.99),
]


@pytest.mark.parametrize(("outside", "wall", "area", "inertia", "modulus", "plastic"), EUROPEAN)
def test_european_tubes(
    outside: float, wall: float, area: float, inertia: float, modulus: float, plastic: float
) -> None:
    got = tube.section(outside, wall)
    table = [area * 1e2, inertia * 1e4, modulus * 1e3, plastic * 1e3]
    assert [float(v) for v in got[:4]] == pytest.approx(table, rel=6e-3)  # three figures


def test_a_meshed_section() -> None:
    """The mesher sectionproperties 3.10.2 with 128 sides (computed), 50.8 x 3.2: a polygon is a little less than the circle."""
    meshed = [478.34, 136031.7, 5355.58, 7256.98, 272063.5]
    assert [float(v) for v in tube.section(50.8, 3.2)] == pytest.approx(meshed, rel=1e-3)


def test_von_mises_of_pure_shear() -> None:
    """Yield in shear is yield over root three: any text."""
    assert float(tube.von_mises(0.0, 1.0)) == pytest.approx(3**0.5)


# Overhang, by hand (row 1 also run in PyNiteFEA 3.2.0 and anastruct 1.7.0): a, b, P, R up, R low, N·m, tip mm, slope, bow.
OVERHANGS = [
    (600, 800, 1000, -1333.333, 2333.333, 800.0, 11.366856, 0.018268162, 0.703142, 149.257),
    (400, 900, 1500, -3375.0, 4875.0, 1350.0, 20.037890, 0.029971203, 0.527356, 251.871),
]


@pytest.mark.parametrize(("a", "b", "force", "upper", "lower", "moment", "tip", "slope", "bow", "stress"), OVERHANGS)
def test_overhang(  # noqa: PLR0913, PLR0917 - one column each
    a: float, b: float, force: float, upper: float, lower: float, moment: float, tip: float, slope: float, bow: float,
    stress: float,
) -> None:  # fmt: skip
    section = tube.section(50.8, 3.2)
    got = shaft.collar_loads(force, -b, a)
    assert [float(v) for v in got] == pytest.approx([lower, upper], abs=1e-3)
    assert float(shaft.collar_moments(force, -b, a).lower) == pytest.approx(moment)
    assert float(shaft.tip_deflection(force, a, b, STEEL, section.inertia)) == pytest.approx(tip, rel=1e-6)
    assert float(shaft.tip_slope(force, a, b, STEEL, section.inertia)) == pytest.approx(slope, rel=1e-6)
    assert float(shaft.back_bow(force, a, b, STEEL, section.inertia)) == pytest.approx(bow, rel=1e-5)
    assert float(tube.bending_stress(moment, section.modulus)) == pytest.approx(stress, abs=6e-4)


def beam(a: float, b: float, up: float, force: float, at_top: float) -> FEModel3D:
    """Return a solved beam: tip at 0, lower support at b, upper at a + b, top end at a + b + up; a force at each end."""
    section, model = tube.section(50.8, 3.2), FEModel3D()
    model.add_material("steel", STEEL, STEEL / 2.6, 0.3, 7.98e-6)
    model.add_section("tube", float(section.area), *(float(section.inertia),) * 2, float(section.polar))
    for name, place in (
        ("tip", 0.0),
        ("lower", b),
        ("bow", b + a * (1 - 3**-0.5)),
        ("upper", a + b),
        ("top", a + b + up),
    ):
        model.add_node(name, place, 0, 0)
    for one, other in (("tip", "lower"), ("lower", "bow"), ("bow", "upper"), ("upper", "top")):
        model.add_member(one + other, one, other, "steel", "tube")
    model.def_support("lower", support_DX=True, support_DY=True, support_DZ=True, support_RX=True)
    model.def_support("upper", support_DY=True, support_DZ=True)
    model.add_node_load("tip", "FY", force)
    model.add_node_load("top", "FY", at_top)
    model.analyze_linear()
    return model


@pytest.mark.parametrize(("a", "b", "force"), [(600.0, 800.0, 1000.0), (400.0, 900.0, 1500.0), (750.0, 420.0, -640.0)])
def test_overhang_against_another_frame_program(a: float, b: float, force: float) -> None:
    """PyNiteFEA, run here. Its reactions are what supports do; the shaft does the opposite to the collars."""
    model, inertia = beam(a, b, 200.0, force, 0.0), tube.section(50.8, 3.2).inertia
    nodes, combo = model.nodes, "Combo 1"
    got = shaft.collar_loads(force, -b, a)
    assert -nodes["lower"].RxnFY[combo] == pytest.approx(float(got.lower), rel=1e-9)
    assert -nodes["upper"].RxnFY[combo] == pytest.approx(float(got.upper), rel=1e-9)
    assert nodes["tip"].DY[combo] == pytest.approx(float(shaft.tip_deflection(force, a, b, STEEL, inertia)), rel=1e-9)
    assert abs(nodes["tip"].RZ[combo]) == pytest.approx(
        abs(float(shaft.tip_slope(force, a, b, STEEL, inertia))), rel=1e-9
    )
    assert abs(nodes["bow"].DY[combo]) == pytest.approx(
        abs(float(shaft.back_bow(force, a, b, STEEL, inertia))), rel=1e-9
    )


def test_a_mass_above_the_upper_collar_against_another_frame_program() -> None:
    """PyNiteFEA, run here: 1000 N at the blade, 400 N at the head 300 mm above the upper collar."""
    model = beam(600.0, 800.0, 300.0, 1000.0, 400.0)
    below, above = shaft.collar_loads(1000.0, -800.0, 600.0), shaft.collar_loads(400.0, 900.0, 600.0)
    for k, name in enumerate(("lower", "upper")):
        assert -model.nodes[name].RxnFY["Combo 1"] == pytest.approx(float(below[k] + above[k]), rel=1e-9)
    bends = shaft.collar_moments(np.array([1000.0, 400.0]), np.array([-800.0, 900.0]), 600.0)
    for member, value in (("tiplower", bends.lower.sum()), ("uppertop", bends.upper.sum())):
        most = max(abs(model.members[member].max_moment("Mz")), abs(model.members[member].min_moment("Mz")))
        assert most == pytest.approx(1000 * float(value), rel=1e-9)


def eigenfrequency(a: float, b: float, end_kg: float, tube_kg_m: float, inertia: float, count: int = 40) -> float:
    """Return the first frequency in Hz by beam elements with consistent mass; written here, shares no code. N, m, kg."""
    pieces = [b / 1000 / count] * count + [a / 1000 / count] * count
    size = 2 * (len(pieces) + 1)
    k, m = np.zeros((size, size)), np.zeros((size, size))
    rigidity = STEEL * 1e6 * inertia * 1e-12
    for e, h in enumerate(pieces):
        at = slice(2 * e, 2 * e + 4)
        k[at, at] += (
            rigidity
            / h**3
            * np.array(
                [
                    [12, 6 * h, -12, 6 * h],
                    [6 * h, 4 * h**2, -6 * h, 2 * h**2],
                    [-12, -6 * h, 12, -6 * h],
                    [6 * h, 2 * h**2, -6 * h, 4 * h**2],
                ]
            )
        )
        m[at, at] += (
            tube_kg_m
            * h
            / 420
            * np.array(
                [
                    [156, 22 * h, 54, -13 * h],
                    [22 * h, 4 * h**2, 13 * h, -3 * h**2],
                    [54, 13 * h, 156, -22 * h],
                    [-13 * h, -3 * h**2, -22 * h, 4 * h**2],
                ]
            )
        )
    m[0, 0] += end_kg
    free = [i for i in range(size) if i not in (2 * count, size - 2)]
    least = eigh(k[np.ix_(free, free)], m[np.ix_(free, free)], eigvals_only=True, subset_by_index=[0, 0])[0]
    return float(np.sqrt(least) / (2 * np.pi))


@pytest.mark.parametrize(
    ("a", "b", "end", "tube_mass"),
    [(600, 800, 30, 3.82), (350, 700, 45, 3.82), (900, 500, 5, 3.82), (600, 800, 0.5, 3.82)],
)
def test_first_frequency_against_an_eigenvalue_solution(a: float, b: float, end: float, tube_mass: float) -> None:
    """Rayleigh's quotient is never below the eigenvalue, and with a blade at the end within 1 % of it."""
    inertia = float(tube.section(50.8, 3.2).inertia)
    true = eigenfrequency(a, b, end, tube_mass, inertia)
    got = float(vibration.first_frequency(end, tube_mass, a, b, STEEL, inertia))
    assert true * (1 - 1e-6) <= got
    assert got == pytest.approx(true, rel=0.01 if end >= 5 else 0.05)


def test_a_cantilever_with_a_mass_at_its_end() -> None:
    """33/140 of a cantilever's own mass counts at its end (any text on vibration): spacing going to nothing."""
    inertia = float(tube.section(50.8, 3.2).inertia)
    got = float(vibration.first_frequency(10.0, 3.82, 1e-3, 800.0, STEEL, inertia))
    mass = 10.0 + 33 / 140 * 3.82 * 0.8
    stiffness = 3 * STEEL * inertia / 800.0**3 * 1000
    assert got == pytest.approx(np.sqrt(stiffness / mass) / (2 * np.pi), rel=1e-5)


def test_added_mass_of_a_plate_and_a_cylinder() -> None:
    """Per metre of span: π/4 rho c² for a plate square to itself and for a cylinder (potential flow, any text)."""
    assert float(vibration.added_mass(1000.0, 1000.0)) == pytest.approx(1025 * np.pi / 4)
