"""The boat form `boat-form/1`: the one shape in which a boat is described.

Frame: x aft, y starboard, z up; x = 0 at the top edge of the transom on the centreline, y = 0 on the
centreline, z = 0 at the loaded waterline. Lengths in mm, angles in degrees, masses in kg. A string with
a unit ("4 ft 2 1/2 in", "1,27 m", "18°") is taken wherever a number is. Unknown is null; 0 is a value.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache, lru_cache
from itertools import pairwise
from typing import Annotated, Any, Literal, Self, get_args

from pydantic import (
    AfterValidator,
    BaseModel,
    BeforeValidator,
    ConfigDict,
    Field,
    field_validator,
    model_validator,
)

from service.core import units
from service.core.days import Moment
from service.core.words import nearest

Stern = Literal["plumb", "raked", "reverse", "scoop", "open", "double_ended"]
Material = Literal["frp_solid", "frp_cored", "wood", "aluminium", "steel"]
Side = Literal["any", "centre", "port", "starboard"]
ObstacleKind = Literal[
    "ladder", "platform", "davits", "outboard", "exhaust", "rail", "stay", "boom", "boomkin", "arch",
    "panels", "mast", "staff", "passerelle", "locker", "other",
]  # fmt: skip
Method = Literal[
    "tape", "laser", "phone_level", "inclinometer", "drawing", "brochure", "scale", "photo",
    "sister_ship", "guess",
]  # fmt: skip
STERNS: tuple[str, ...] = get_args(Stern)
OBSTACLE_KINDS: tuple[str, ...] = get_args(ObstacleKind)
METHODS: tuple[str, ...] = get_args(Method)


def _quantity(dimension: units.Dimension, shown: Any) -> BeforeValidator:  # noqa: ANN401 - a type with its bounds
    """Read text with a unit. It stands behind the bounds of its field, which the validator's own code then checks."""

    def read(value: object) -> object:
        if not isinstance(value, str):
            return value
        got = units.parse(value, dimension, assumed=units.SI_UNIT[dimension])
        if isinstance(got, units.Unread):
            raise ValueError(f"{value!r} is {got.reason}: {got.why}")  # noqa: TRY004 - pydantic wants ValueError
        return got.value

    return BeforeValidator(read, json_schema_input_type=shown)


def _span(value: tuple[float | None, float | None] | None) -> tuple[float | None, float | None] | None:
    if value is not None and value[0] is not None and value[1] is not None and value[0] > value[1]:
        raise ValueError(f"the first end {value[0]:g} is greater than the second {value[1]:g}; write the smaller first")
    return value


FAR_MM = 60_000.0
_LENGTH = Field(ge=-FAR_MM, le=FAR_MM, allow_inf_nan=False)
_SIZE = Field(ge=0, le=FAR_MM, allow_inf_nan=False)
_ANGLE = Field(ge=-80, le=80, allow_inf_nan=False)
_MASS = Field(gt=0, le=500_000, allow_inf_nan=False)
Length = Annotated[float, _LENGTH, _quantity("length", Annotated[float | str, _LENGTH])]
Size = Annotated[float, _SIZE, _quantity("length", Annotated[float | str, _SIZE])]
Angle = Annotated[float, _ANGLE, _quantity("angle", Annotated[float | str, _ANGLE])]
Mass = Annotated[float, _MASS, _quantity("mass", Annotated[float | str, _MASS])]
Span = Annotated[tuple[Length | None, Length | None], AfterValidator(_span)]
Text = Annotated[str, Field(max_length=2000)]


class Shape(BaseModel):
    """Base of every published shape: frozen, strict about keys."""

    model_config = ConfigDict(frozen=True, extra="forbid", populate_by_name=True, str_strip_whitespace=True)


class Asked(Shape):
    """Who asked, when and how."""

    reference: Text | None = None
    received: Moment | None = None
    channel: Literal["email", "web", "phone", "api"] | None = None
    dealer: Text | None = None
    country: Annotated[str, Field(pattern=r"^[A-Z]{2}$")] | None = None
    language: Annotated[str, Field(pattern=r"^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*$")] | None = None


class Contact(Shape):
    """Who is to be answered. Kept apart from the boat."""

    name: Text | None = None
    email: Text | None = None
    phone: Text | None = None
    role: Literal["owner", "dealer", "yard"] | None = None


class Boat(Shape):
    """The boat as a whole."""

    builder: Text | None = Field(None, title="builder")
    model: Text | None = Field(None, title="model")
    year: Annotated[int, Field(ge=1850, le=2100)] | None = Field(None, title="year built")
    name: Text | None = None
    sail_number: Text | None = None
    hull_number: Text | None = None
    loa_mm: Size | None = Field(None, title="length overall")
    lwl_mm: Size | None = Field(None, title="waterline length")
    beam_mm: Size | None = Field(None, title="beam")
    draft_mm: Size | None = Field(None, title="draft")
    displacement_kg: Mass | None = Field(None, title="displacement")
    displacement_is: Literal["light", "loaded"] | None = None
    hull_material: Material | None = Field(None, title="hull material")
    stern: Stern | None = Field(None, title="stern")


class ProfilePoint(Shape):
    """One point of the centreline: height above water or distance below the top edge, and x."""

    height_mm: Length | None = None
    below_top_mm: Size | None = None
    aft_mm: Length

    @model_validator(mode="after")
    def _one_height(self) -> Self:
        if (self.height_mm is None) == (self.below_top_mm is None):
            raise ValueError("give exactly one of height_mm and below_top_mm")
        return self


class SectionPoint(Shape):
    half_breadth_mm: Size
    aft_mm: Length


class Section(Shape):
    """A level cut through the stern: half-breadths and x at one height."""

    height_mm: Length | None = None
    below_top_mm: Size | None = None
    points: tuple[SectionPoint, ...] = Field(min_length=1, max_length=200)

    @model_validator(mode="after")
    def _ordered(self) -> Self:
        if (self.height_mm is None) == (self.below_top_mm is None):
            raise ValueError("give exactly one of height_mm and below_top_mm")
        halves = [point.half_breadth_mm for point in self.points]
        if any(b <= a for a, b in pairwise(halves)):
            raise ValueError("half_breadth_mm must grow from point to point; the section folds back")
        return self


class Transom(Shape):
    """The skin that bears the brackets."""

    top_height_mm: Annotated[Size, Field(gt=0)] | None = Field(
        None,
        title="height of the transom's top edge above the water",
        description="On the centreline, from the water to the highest skin that could bear a bracket: no rail, cap or "
        "coaming. Flat calm, loaded as you cruise.",
    )
    bottom_height_mm: Length | None = Field(
        None,
        title="height of the transom's bottom edge above the water",
        description="On the centreline, from the water to where the transom ends below; negative under water.",
    )
    rake_deg: Angle | None = Field(
        None,
        title="rake of the transom",
        description="Angle from vertical with a level held on the centreline. Say which way: top edge further aft than "
        "the bottom (a counter, positive) or further forward (reverse, negative).",
    )
    profile: tuple[ProfilePoint, ...] | None = Field(None, max_length=200, title="centreline profile")
    sections: tuple[Section, ...] | None = Field(None, max_length=50, title="plan sections")
    width_top_mm: Size | None = Field(
        None, title="width of the transom at the top", description="Full width along the top edge."
    )
    width_waterline_mm: Size | None = Field(
        None, title="width of the transom at the waterline", description="Full width at the waterline or bottom edge."
    )
    camber_mm: Length | None = Field(
        None,
        title="camber of the transom",
        description="Hold a straight batten across the top edge, touching in the middle; half the sum of the gaps at "
        "both sides. Positive when the middle stands aft of the sides.",
    )
    thickness_mm: Size | None = Field(
        None,
        title="thickness of the skin",
        description="At a through-hull or a drilled hole: all of it, core included.",
    )
    core_mm: Size | None = Field(None, title="thickness of the core")
    step_height_mm: Length | None = Field(
        None, title="height of the step above the water", description="From the water to the step's upper face."
    )
    step_depth_mm: Size | None = Field(
        None, title="depth of the step", description="Fore and aft, from the riser's foot to the step's after edge."
    )
    step_width_mm: Size | None = Field(None, title="width of the step", description="Athwartships, where it is flat.")
    lower_rake_deg: Angle | None = Field(None, title="rake of the skin under the step")
    post_width_mm: Size | None = Field(None, title="width of the sternpost")

    @field_validator("profile", "sections")
    @classmethod
    def _no_fold(cls, rows: tuple[Any, ...] | None) -> tuple[Any, ...] | None:
        if rows is None:
            return rows
        if len(rows) < 2:  # noqa: PLR2004 - a line needs two points
            raise ValueError("at least two heights are needed")
        if len({row.height_mm is None for row in rows}) > 1:
            raise ValueError("use either height_mm or below_top_mm throughout")
        down = [row.below_top_mm if row.height_mm is None else -row.height_mm for row in rows]
        steps = [b - a for a, b in pairwise(down)]
        if not (all(s > 0 for s in steps) or all(s < 0 for s in steps)):
            raise ValueError("heights must go steadily down (or up) from point to point; it folds back")
        return rows

    @model_validator(mode="after")
    def _plausible(self) -> Self:
        if (
            self.top_height_mm is not None
            and self.bottom_height_mm is not None
            and self.bottom_height_mm >= self.top_height_mm
        ):
            raise ValueError("bottom_height_mm must be less than top_height_mm")
        if self.core_mm is not None and self.thickness_mm is not None and self.core_mm >= self.thickness_mm:
            raise ValueError("core_mm must be less than thickness_mm: thickness is all of the skin, core within it")
        return self


class MainRudder(Shape):
    """The boat's own rudder: inboard under the hull, or hung on transom or sternpost."""

    hung: Literal["inboard", "transom"] | None = Field(
        None,
        title="how the main rudder is hung",
        description="Under the hull (inboard), or outboard on the transom or sternpost.",
    )
    number: Literal[1, 2] | None = None
    spacing_mm: Size | None = None
    stock_aft_mm: Length | None = Field(
        None,
        title="position of the rudder stock",
        description="Fore and aft from a plumb line at the transom's top edge; forward is negative.",
    )
    leading_edge_aft_mm: Length | None = Field(None, title="leading edge of the main rudder")
    trailing_edge_aft_mm: Length | None = Field(
        None,
        title="trailing edge of the main rudder",
        description="Fore and aft from a plumb line at the transom's top edge to the rudder's aftmost edge; forward is "
        "negative.",
    )
    top_height_mm: Length | None = Field(None, title="top of the main rudder's blade above the water")
    bottom_height_mm: Length | None = Field(None, title="bottom of the main rudder's blade above the water")
    max_deflection_deg: Annotated[Angle, Field(ge=0)] | None = Field(
        None, title="how far the main rudder turns each way"
    )


class Extent(Shape):
    aft: Size | None = None
    starboard: Size | None = None
    height: Size | None = None


class Box(Shape):
    """A box in the frame; an end that is null is unbounded."""

    aft_mm: Span | None = None
    starboard_mm: Span | None = None
    height_mm: Span | None = None


class Obstacle(Box):
    """Something on the stern that the gear must clear."""

    kind: ObstacleKind
    note: Text | None = None
    number: Annotated[int, Field(ge=1, le=20)] | None = None
    side: Literal["port", "starboard", "centre", "both", "across"] | None = None
    size_mm: Extent | None = None
    removable: bool | None = None
    keep: bool | None = None
    moves: Literal["fixed", "folds", "swings", "slides"] | None = None
    swept_to: Box | None = None
    present: bool | None = None


class Preferences(Shape):
    side: Side | None = None
    avoid: tuple[Literal["centre", "port", "starboard"], ...] | None = None
    strength: Literal["must", "wish"] | None = None


class OtherDatum(Shape):
    """A height said from something other than the waterline or the top edge."""

    field: Text
    value_mm: Length
    datum: Literal["top_edge", "deck", "toe_rail", "boot_stripe", "step", "keel", "other"]


class BoatForm(Shape):
    """One boat as its owner or dealer describes it. Nothing has a default: what nobody said stays null."""

    schema_: Literal["boat-form/1"] = Field("boat-form/1", alias="schema")
    enquiry: Asked = Asked()
    contact: Contact = Contact()
    boat: Boat = Boat()
    transom: Transom = Transom()
    main_rudder: MainRudder = MainRudder()
    obstacles: tuple[Obstacle, ...] = Field((), max_length=100)
    preferences: Preferences = Preferences()
    other_datum: tuple[OtherDatum, ...] = Field((), max_length=100)
    methods: dict[str, Method] = {}
    uncertainties: dict[str, Annotated[float, Field(ge=0, allow_inf_nan=False)]] = {}
    notes: Annotated[str, Field(max_length=20_000)] | None = None

    @field_validator("methods", "uncertainties")
    @classmethod
    def _known_paths(cls, named: dict[str, Any]) -> dict[str, Any]:
        for path in named:
            if path != "*" and not is_path(path):
                raise ValueError(f"{path!r} is no field of the form; did you mean {nearest(path, paths())!r}?")
        return named

    def document(self) -> dict[str, Any]:
        """Return the form as JSON values, without what nobody said."""
        bare: dict[str, Any] = _bare(self.model_dump(mode="json", by_alias=True, exclude_none=True))
        return bare


def _bare(value: Any) -> Any:  # noqa: ANN401 - JSON is any
    if isinstance(value, dict):
        kept = {key: _bare(item) for key, item in value.items()}
        return {key: item for key, item in kept.items() if item not in ({}, [], ())}
    if isinstance(value, list):
        return [_bare(item) for item in value]
    return value


# --- paths: `transom.profile[2].aft_mm` ---------------------------------------------------------------


def _walk(model: type[BaseModel], stem: str = "") -> Iterator[str]:
    for name, info in model.model_fields.items():
        key = info.alias or name
        inner = inner_model(info.annotation)
        many = "tuple" in str(info.annotation) and inner is not None
        path = f"{stem}{key}{'[]' if many else ''}"
        yield path
        if inner is not None:
            yield from _walk(inner, path + ".")


def inner_model(annotation: object) -> type[BaseModel] | None:
    """Return the shape inside an annotation (`tuple[Obstacle, ...] | None` -> Obstacle), None where there is none."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    for arg in get_args(annotation):
        found = inner_model(arg)
        if found is not None:
            return found
    return None


@cache
def paths() -> tuple[str, ...]:
    """Every field of the form, list places written `[]`."""
    return tuple(_walk(BoatForm))


def is_path(path: str) -> bool:
    """Say whether `path` names a field (or a whole part) of the form; `obstacles[0]`, `obstacles` and `transom` do."""
    bare = re.sub(r"\[\d+\]", "[]", path)
    return bare in paths() or (not bare.endswith("]") and f"{bare}[]" in paths())


def title(path: str) -> str:
    """Return what people call the field, for messages and questions; the path itself where it has no title."""
    return _field(path)[0] or path


def how_to_measure(path: str) -> str | None:
    """Return one or two sentences on how the field is measured, where they stand in the form's definition."""
    return _field(path)[1]


def _field(path: str) -> tuple[str | None, str | None]:
    model: type[BaseModel] | None = BoatForm
    info = None
    for part in re.sub(r"\[\d*\]", "", path).split("."):
        if model is None:
            return None, None
        info = next((i for n, i in model.model_fields.items() if (i.alias or n) == part), None)
        if info is None:
            return None, None
        model = inner_model(info.annotation)
    return (info.title, info.description) if info else (None, None)


@lru_cache(maxsize=4096)
def _parts(path: str) -> tuple[str, ...]:
    """Return the steps of a path, list places as `[0]`. KeyError for a path the form does not have."""
    if not is_path(path):
        raise KeyError(path)
    return tuple(re.findall(r"[^.\[\]]+|\[\d+\]", path))


def get(form: BoatForm, path: str) -> Any:  # noqa: ANN401 - a field of any type
    """Return the value at `path`, None where nobody said. KeyError for a path the form does not have."""
    value: Any = form
    for part in _parts(path):
        if value is None:
            return None
        if part.startswith("["):
            index = int(part[1:-1])
            value = value[index] if index < len(value) else None
        else:
            value = value.schema_ if part == "schema" else getattr(value, part)
    return value
