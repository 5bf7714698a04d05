"""The parts of a reply: what is suggested and where it sits, why, how sure, what the owner provides, what is in the way."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import reduce

from service.core.answer import labels
from service.core.answer.letter import Block
from service.core.answer.questions import ASKABLE
from service.core.answer.shapes import Answer, Contrast, Suggestion
from service.core.answer.speech import Said, Speech, mm, said, share
from service.core.boat import BoatForm
from service.core.fit.names import NEAREST_INCH, OWN_TUBE, obstacle_names, of_hull
from service.core.fit.shapes import Check, Fastener, Fit
from service.core.recall import Difference, Precedent

MOST_DIFFERENCES, MOST_DOUBTS, MOST_FILLED = 3, 3, 4
WORTH_NAMING = 0.05
"""A measurement that carries less of the doubt than this is not named."""
CENTRED_MM = 0.5
_OTHER_PART = re.compile(r"with (shaft|lower bracket|upper bracket) (.+) it would pass")
_OBSTACLE = re.compile(r"obstacle\[\d+\]")


def is_backing(one: Said) -> bool:
    """Say whether a caution is about how far experience backs the answer, and so belongs to how sure it is."""
    return one.id.startswith("backing-")


def suggested(answer: Answer, speech: Speech) -> Block:
    """Return what is suggested, whether it fits, and where it sits."""
    best = answer.suggestions[0]
    fit = best.fit
    lines = [speech.say("reply-suggest", **best.configuration.model_dump())]
    lines.append(speech.say("reply-verdict", verdict=fit.verdict))
    if fit.placement is not None:
        p = fit.placement
        side = "centre" if abs(p.offset_mm) < CENTRED_MM else "starboard" if p.offset_mm > 0 else "port"
        lines.append(speech.say(
            "reply-place", side=side, offset=mm(abs(p.offset_mm)), aft=mm(p.shaft_aft_mm),
            lower=mm(p.lower_height_mm), upper=mm(p.upper_height_mm),
        ))  # fmt: skip
    asks = tuple(map(speech.sentence, trades(answer.form, fit)))
    return Block(
        speech.say("heading-suggest"), tuple(lines), lists=((speech.say("reply-trades"), asks),) if asks else ()
    )


def trades(form: BoatForm, fit: Fit) -> Iterator[Said]:
    """Return what the fit asks of the boat: things taken off, skin built up. One for each of `fit.trades`."""
    failed = [check for check in fit.checks if check.status == "fail" and not check.binds]
    for check in failed:
        if _OBSTACLE.fullmatch(check.id):
            yield said("trade-take-off", thing=labels.thing_at(form, check.id))
    for role in ("lower", "upper"):
        if any(of_hull(c.id) and f".{role}." in c.id for c in failed):
            yield said("trade-build-up", bracket=labels.bracket(role))


def why(answer: Answer, speech: Speech) -> Block:
    """Return what experience there is: sister ships, who carries the same, the boat most like this one."""
    lines = [speech.say("reply-sisters", count=answer.sisters)]
    looked = [p for p in answer.precedents if p.sister] or list(answer.precedents)
    best = answer.suggestions[0]
    if looked and answer.fits:
        same = sum(p.configuration == best.configuration for p in looked)
        lines.append(speech.say("reply-same", same=same, looked=len(looked)))
    if answer.fits and best.origin == "solver" and not any(one.id == "backing-tried" for one in answer.warned):
        lines.append(speech.say("reply-tried"))
    lists = [_likest(answer.form, max(looked, key=lambda p: p.likeness), speech)] if looked else []
    contrasts = [line for one in answer.contrasts[:1] if answer.fits for line in _contrast(answer.form, one, speech)]
    return Block(speech.say("heading-why"), (" ".join(lines), *contrasts), tuple(lists))


def _likest(form: BoatForm, one: Precedent, speech: Speech) -> tuple[str, tuple[str, ...]]:
    most = sorted(one.differences, key=lambda d: -d.share)[:MOST_DIFFERENCES]
    told = tuple(speech.sentence(_difference(form, d)) for d in most)
    return speech.say("reply-likest" if told else "reply-alike", record=one.record), told


def _difference(form: BoatForm, one: Difference) -> Said:
    name = labels.label(form, one.field)
    sides = {}
    for whose, value in (("theirs", one.theirs), ("ours", one.ours)):
        if value is not None:
            things = one.field == "obstacles"
            sides[whose] = labels.things(str(value)) if things else labels.value_of(one.field, value)
    if len(sides) == 1:
        return said("reply-hers-only" if "theirs" in sides else "reply-ours-only", field=name, **sides)
    return said("reply-differs", field=name, **sides)


def _contrast(form: BoatForm, one: Contrast, speech: Speech) -> Iterator[str]:
    if one.field is None or one.theirs is None or one.ours is None or one.effect not in ("fails", "moves"):
        return
    values = {
        "field": labels.label(form, one.field),
        "theirs": labels.value_of(one.field, one.theirs),
        "ours": labels.value_of(one.field, one.ours),
    }
    if one.effect == "fails":
        yield speech.say("contrast-fails", **values)
    elif one.shift_mm is not None:
        aft, lower, upper = (("+" if v > 0 else "") + speech.length(v) for v in one.shift_mm)
        yield speech.say("contrast-moves", **values, aft=aft, lower=lower, upper=upper)


def sure(answer: Answer, speech: Speech) -> Block:
    """Return the chance that it fits, what the doubt rests on, and what was taken from elsewhere."""
    fit = answer.suggestions[0].fit
    lines = [speech.sentence(one) for one in answer.warned if is_backing(one)]
    lists = []
    if answer.fits:
        if fit.probability is not None:
            lines.insert(0, speech.say("reply-chance", chance=share(fit.probability)))
        most = [d for d in sorted(fit.doubt, key=lambda d: -d.share) if d.share >= WORTH_NAMING][:MOST_DOUBTS]
        rests = tuple(
            speech.sentence(said("reply-doubt-line", field=labels.label(answer.form, d.field), share=share(d.share)))
            for d in most
        )
        lists += [(speech.say("reply-doubt"), rests)] if rests else []
    lines += _filled(answer.form, fit, speech)
    return Block(speech.say("heading-sure"), tuple(lines), tuple(lists))


def _filled(form: BoatForm, fit: Fit, speech: Speech) -> Iterator[str]:
    for source in ("sister_ships", "neighbours", "prior"):
        paths = sorted((f.field for f in fit.filled if f.from_ == source), key=_weight)
        names = list(dict.fromkeys(speech.put(labels.label(form, path)) for path in paths))
        told, rest = names[:MOST_FILLED], len(names) - MOST_FILLED
        if told:
            listed = reduce(lambda first, last: speech.say("also", first=first, last=last), told)
            fields = speech.say("and-more", list=listed, count=rest) if rest > 0 else listed
            yield speech.say("reply-filled", source=source, fields=fields)


def _weight(field: str) -> int:
    """Return where a field stands among those that matter most for a fit."""
    return ASKABLE.index(field) if field in ASKABLE else len(ASKABLE)


def provided(answer: Answer, speech: Speech) -> Block:
    """Return what the owner provides: bolts, and what goes with them."""
    fit = answer.suggestions[0].fit
    lines = [speech.put(bolts(one, speech)) for one in fit.fasteners]
    lines += [speech.put(one) for one in supplies(answer.form, fit)]
    return Block(speech.say("heading-buy"), lists=(("", tuple(line[:1].upper() + line[1:] for line in lines)),))


def bolts(one: Fastener, speech: Speech) -> Said:
    """Return the bolts of a bracket as they are bought there: in millimetres, in inches, or both."""
    inch = NEAREST_INCH.get(one.size, one.size)
    imperial = "" if one.length_inch is None else speech.inches(one.length_inch)
    metric = "" if one.length_mm is None else f"{one.length_mm:g} mm"
    size, length = {
        "imperial": (f"{inch} in", imperial),
        "metric": (one.size, metric),
        "both": (f"{one.size} ({inch} in)", f"{metric} ({imperial})" if metric and imperial else metric or imperial),
    }[speech.system]
    if not length:
        return said("supply-bolts-open", bracket=labels.bracket(one.role), count=one.count, size=size)
    return said("supply-bolts", bracket=labels.bracket(one.role), count=one.count, size=size, length=length)


def supplies(form: BoatForm, fit: Fit) -> tuple[Said, ...]:
    """Return what else the owner provides. One for each of `fit.owner_supplies`."""
    names = ["supply-sealant", "supply-backing"]
    names += ["supply-core"] if form.boat.hull_material == "frp_cored" or form.transom.core_mm else []
    names += ["supply-insulate"] if form.boat.hull_material in ("aluminium", "steel") else []
    names += ["supply-tube"] if OWN_TUBE in fit.owner_supplies else []
    return tuple(map(said, names))


def nothing(answer: Answer, speech: Speech) -> Block:
    """Return what comes nearest where nothing fits, what is in its way, and what was tried and would help."""
    nearest = answer.suggestions[0]
    lines = [speech.say("reply-nothing", **nearest.configuration.model_dump())]
    check = in_the_way(nearest)
    if check is not None and check.margin is not None:
        lacks = speech.amount(-check.margin, check.unit)
        lines.append(speech.say("reply-miss", check=check_label(answer.form, check), amount=lacks))
    help_ = tuple(speech.sentence(cure(answer.form, one)) for one in nearest.fit.cures)
    if not help_:
        return Block(speech.say("heading-nothing"), (*lines, speech.say("reply-no-cure")))
    return Block(speech.say("heading-nothing"), tuple(lines), lists=((speech.say("reply-cures"), help_),))


def in_the_way(nearest: Suggestion) -> Check | None:
    """Return the check that lacks most, measured by its scale; None where none fails that binds."""
    failed = [c for c in nearest.fit.checks if c.binds and c.status == "fail" and c.margin is not None]
    return min(failed, key=lambda c: (c.margin or 0.0) / (c.scale or 1.0), default=None)


def check_label(form: BoatForm, check: Check) -> Said:
    """Return what a check looks at, as a label."""
    if _OBSTACLE.fullmatch(check.id):
        return said("check-obstacle", thing=labels.thing_at(form, check.id))
    first, _, rest = check.id.partition(".")
    if first in ("lower", "upper"):
        return said(f"check-{rest}", bracket=labels.bracket(first))
    return said(f"check-{first}")


def cure(form: BoatForm, text: str) -> Said:
    """Return what a cure says, apart from English: one thing less, or one part instead. ValueError for another text."""
    for path, name in obstacle_names(form).items():
        if text == f"without the {name} it would pass":
            return said("cure-without", thing=labels.thing_at(form, path))
    found = _OTHER_PART.fullmatch(text)
    if found is None:
        raise ValueError(f"a cure of another kind: {text!r}")
    what, code = found.groups()
    return (
        said("cure-shaft", code=code)
        if what == "shaft"
        else said("cure-bracket", bracket=labels.bracket(what.split()[0]), code=code)
    )
